/**
 * Places on a lattice, and a bed shared among several plants. Start with {@link
 * yardloom.planting.placing.formula.Lattice}.
 */
package yardloom.planting.placing.formula;
