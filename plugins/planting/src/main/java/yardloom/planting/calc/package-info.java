/**
 * Pure planting arithmetic: where plants stand, how a bed is shared, how water use runs through the
 * year. Metres inside loops, unit types outside. Start with {@link yardloom.planting.calc.Lattice}.
 */
package yardloom.planting.calc;
