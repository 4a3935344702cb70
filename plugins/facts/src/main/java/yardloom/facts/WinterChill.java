package yardloom.facts;

import yardloom.kernel.fact.Derived;

/**
 * The chill of a usual winter, which fruit trees need before they leaf out.
 *
 * @param hours below 45 °F (7 °C), as the plan states them or the mean over the winters of a
 *     record; not negative
 */
public record WinterChill(Derived<Double> hours) {}
