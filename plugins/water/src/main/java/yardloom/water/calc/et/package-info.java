/**
 * Reference evapotranspiration after FAO-56. Plain doubles carry their unit in the name, because
 * the equations are empirical. Start with {@link yardloom.water.calc.et.PenmanMonteith} or, without
 * wind and humidity, {@link yardloom.water.calc.et.Hargreaves}.
 */
package yardloom.water.calc.et;
