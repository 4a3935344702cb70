package yardloom.facts.work;

import java.time.LocalDate;

/**
 * The day on which the crew plants a kind.
 *
 * @param plant the catalogue name
 */
public record PlantingDay(String plant, LocalDate date) {}
