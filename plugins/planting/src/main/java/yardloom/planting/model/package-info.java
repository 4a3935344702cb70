/**
 * What planting knows about plants and what a plan asks for. Lengths are unit types throughout.
 * Start with {@link yardloom.planting.model.Plant}.
 */
package yardloom.planting.model;
