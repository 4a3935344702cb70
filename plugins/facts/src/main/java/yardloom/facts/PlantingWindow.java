package yardloom.facts;

import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.fact.Derived;

/**
 * When a kind of plant may be set out.
 *
 * @param plant the catalogue name
 * @param springFrom the first usual day of the growing year
 * @param fallUntil the last usual day of the year's second time, where there is one
 */
public record PlantingWindow(
    String plant, Derived<MonthDay> springFrom, Optional<Derived<MonthDay>> fallUntil) {}
