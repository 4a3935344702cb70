/** Water's calculators and checks. Start with {@link yardloom.water.need.DemandCalculator}. */
package yardloom.water.work;
