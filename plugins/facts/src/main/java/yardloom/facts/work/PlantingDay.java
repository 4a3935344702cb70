package yardloom.facts.work;

import java.time.LocalDate;

/**
 * The day on which the crew plants a kind.
 *
 * @param plant the catalogue name
 * @param how as what it is planted then
 */
public record PlantingDay(String plant, String how, LocalDate date) {}
