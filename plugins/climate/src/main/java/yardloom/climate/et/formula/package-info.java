/**
 * Reference evapotranspiration after FAO-56. Plain doubles carry their unit in the name, because
 * the equations are empirical. Start with {@link yardloom.climate.et.formula.StandardizedEt} or,
 * without wind and humidity, {@link yardloom.climate.et.formula.Hargreaves}.
 */
package yardloom.climate.et.formula;
