package yardloom.facts.work;

import java.time.LocalDate;

/**
 * The days on which the crew works a phase.
 *
 * @param to its last day, no earlier than {@code from}
 */
public record PhaseDays(WorkPhase phase, LocalDate from, LocalDate to) {}
