/**
 * Days of planting counted from the usual frosts. Start with {@link
 * yardloom.planting.window.formula.PlantingTime}.
 */
package yardloom.planting.window.formula;
