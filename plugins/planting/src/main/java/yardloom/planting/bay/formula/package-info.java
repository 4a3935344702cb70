/** Parts of a compost bay. Start with {@link yardloom.planting.bay.formula.BayParts}. */
package yardloom.planting.bay.formula;
