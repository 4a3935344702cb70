/** The days of crops that follow each other on one ground, free of plan and facts. */
package yardloom.planting.turn.formula;
