package yardloom.materials.model;

import yardloom.kernel.fact.Derived;

/**
 * What to spread on the beds.
 *
 * @param amount a mass or a volume
 * @param when the season and how often
 */
public record AmendmentDose(String item, Derived<?> amount, String when) {}
