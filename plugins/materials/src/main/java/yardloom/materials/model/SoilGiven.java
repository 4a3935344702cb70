package yardloom.materials.model;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * What the plan says about its soil.
 *
 * @param sand percent of the fine earth
 * @param clay percent of the fine earth
 * @param organic percent of the soil's mass
 * @param rock share of the volume that is rock fragments
 * @param depth the depth that roots use
 * @param how where sand and clay come from: laboratory, jar, ribbon or texture class
 */
public record SoilGiven(
    double sand,
    double clay,
    double organic,
    double rock,
    Length depth,
    Source how,
    SourceRef place) {}
