/**
 * How much water does the air take from short grass each month? Start with {@link
 * yardloom.climate.et.EtCalculator}.
 */
package yardloom.climate.et;
