/** Water's calculators and checks. Start with {@link yardloom.water.work.DemandCalculator}. */
package yardloom.water.work;
