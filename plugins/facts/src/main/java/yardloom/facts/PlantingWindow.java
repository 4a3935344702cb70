package yardloom.facts;

import java.time.MonthDay;
import yardloom.kernel.fact.Derived;

/**
 * When a kind of plant may be set out.
 *
 * @param plant the catalogue name
 * @param springFrom the first usual day of the growing year
 */
public record PlantingWindow(String plant, Derived<MonthDay> springFrom) {}
