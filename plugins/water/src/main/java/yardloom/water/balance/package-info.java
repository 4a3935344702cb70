/**
 * Does the roof give what the plants need, month by month? Start with {@link
 * yardloom.water.balance.MonthTable}.
 */
package yardloom.water.balance;
