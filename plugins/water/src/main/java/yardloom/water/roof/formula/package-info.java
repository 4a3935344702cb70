/**
 * Rain times roof, the first dirty water, gutters and downspouts. Unit types at the boundary. Start
 * with {@link yardloom.water.roof.formula.RainYield}.
 */
package yardloom.water.roof.formula;
