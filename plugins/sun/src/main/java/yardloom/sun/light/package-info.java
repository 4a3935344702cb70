/**
 * What is an amount of sun called, and which scheme calls it so? Start with {@link
 * yardloom.sun.light.LightSchemes}; how much light hours of sun bring is in {@code light.formula}.
 */
package yardloom.sun.light;
