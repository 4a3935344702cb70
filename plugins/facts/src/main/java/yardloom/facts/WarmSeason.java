package yardloom.facts;

import java.time.MonthDay;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Temperature;

/**
 * The part of a year in which the ground is warm enough for tender plants; it may run over the turn
 * of the year.
 *
 * @param begins first day with a mean of {@code limit}
 * @param ends last day with such a mean
 * @param limit what counts as warm
 */
public record WarmSeason(Derived<MonthDay> begins, Derived<MonthDay> ends, Temperature limit) {}
