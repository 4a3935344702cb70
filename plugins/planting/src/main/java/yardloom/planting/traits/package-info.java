/**
 * What each kind of the catalogue asks of soil, light, water and neighbours, and what it is good
 * for. One table for each question, one source for each value. Days are counted from the last frost
 * of spring. Start with {@link yardloom.planting.traits.SoilNeed}.
 */
package yardloom.planting.traits;
