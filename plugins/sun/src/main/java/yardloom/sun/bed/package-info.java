/**
 * How much sun do beds and planted trees get, and does it suit their plants? Start with {@link
 * yardloom.sun.bed.SunHoursCalculator}.
 */
package yardloom.sun.bed;
