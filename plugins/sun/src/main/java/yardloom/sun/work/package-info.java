/**
 * Calculators and checks of the sun plugin. Start with {@link
 * yardloom.sun.work.SunHoursCalculator}.
 */
package yardloom.sun.work;
