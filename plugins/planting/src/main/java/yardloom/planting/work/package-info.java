/**
 * Planting's calculators and checks: from what a plan asks for to stands, shade, bills and
 * findings. Start with {@link yardloom.planting.work.Planting}.
 */
package yardloom.planting.work;
