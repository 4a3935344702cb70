package yardloom.facts.mulch;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Volume;

/**
 * Chips to add in a year after laying.
 *
 * @param year 1 is the first after laying
 */
public record TopUp(int year, Derived<Volume> add) {}
