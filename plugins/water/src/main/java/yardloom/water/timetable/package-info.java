/**
 * How long and how often is each bed watered? Start with {@link yardloom.water.line.PeakWatering}
 * for how long and {@link yardloom.water.timetable.WateringInterval} for how often.
 */
package yardloom.water.timetable;
