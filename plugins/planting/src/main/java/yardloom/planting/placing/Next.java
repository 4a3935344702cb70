package yardloom.planting.placing;

import java.time.MonthDay;
import java.util.Optional;

/**
 * A kind that takes the ground of another of its bed once that is over in the same year.
 *
 * @param after the catalogue name of the kind before it
 * @param on the day on which it is planted, if the plan says: the kind before it goes then
 * @param days from planting until it is over, if the plan says: those of a variety
 */
public record Next(
    PlantChoice choice, String after, Optional<MonthDay> on, Optional<Integer> days) {}
