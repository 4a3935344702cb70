/**
 * Do sun, winter and neighbours suit the plants where they stand? Start with {@link
 * yardloom.planting.fit.LightCheck}.
 */
package yardloom.planting.fit;
