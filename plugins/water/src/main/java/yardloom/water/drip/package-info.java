/**
 * Which rows of dripline lie in each bed, what flows out of them, how evenly, and what is bought
 * for them? Start with {@link yardloom.water.drip.DripCalculator}.
 */
package yardloom.water.drip;
