package yardloom.facts.mulch;

import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * How high the soil of a raised or keyhole bed lies.
 *
 * @param height of the soil above the ground around it
 */
public record SoilTop(ElementId in, Length height, SourceRef place) {}
