/**
 * What is to be done for the plants from the day of planting on, when, and how long it takes? Start
 * with {@link yardloom.planting.care.CareCalculator}.
 */
package yardloom.planting.care;
