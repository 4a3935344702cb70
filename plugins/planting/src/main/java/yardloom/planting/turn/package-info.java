/**
 * Which crops follow each other on one ground in a year, and when? Start with {@link
 * yardloom.planting.turn.TurnPlan}; its days are worked out beside the days of planting.
 */
package yardloom.planting.turn;
