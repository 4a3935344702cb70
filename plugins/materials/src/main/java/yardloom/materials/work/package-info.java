/**
 * The calculators and checks of the materials plugin. Start with {@link
 * yardloom.materials.work.BillCalculator}.
 */
package yardloom.materials.work;
