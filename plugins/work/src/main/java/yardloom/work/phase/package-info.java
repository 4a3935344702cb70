/**
 * In which order and on which days the work is done, and what to order for it. Start with {@link
 * yardloom.work.phase.ScheduleCalculator}.
 */
package yardloom.work.phase;
