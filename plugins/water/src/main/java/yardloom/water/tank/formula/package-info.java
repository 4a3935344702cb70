/**
 * A tank stepped through what flows in and what is drawn, and a rule for its size. Start with
 * {@link yardloom.water.tank.formula.TankBehaviour}.
 */
package yardloom.water.tank.formula;
