/**
 * Run time, interval and what soil holds within roots. Unit types at the boundary. Start with
 * {@link yardloom.water.timetable.formula.WateringPlan}.
 */
package yardloom.water.timetable.formula;
