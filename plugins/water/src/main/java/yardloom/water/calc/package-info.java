/**
 * Published formulas of rain, evapotranspiration and irrigation as pure functions. Plain doubles
 * carry their unit in the name. Start with {@link yardloom.water.calc.Hargreaves} or {@link
 * yardloom.water.calc.RainYield}.
 */
package yardloom.water.calc;
