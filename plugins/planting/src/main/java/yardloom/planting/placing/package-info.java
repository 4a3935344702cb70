/**
 * Where does each plant stand? From the words of a bed to places on the ground. Start with {@link
 * yardloom.planting.placing.Planting}.
 */
package yardloom.planting.placing;
