/**
 * The lines from the tap to the rows of each zone: where they lie, how wide they are, what flows
 * and presses in them, what is bought and dug for them. Start with {@link
 * yardloom.water.line.LineCalculator}.
 */
package yardloom.water.line;
