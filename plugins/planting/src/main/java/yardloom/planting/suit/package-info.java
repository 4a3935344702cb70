/**
 * Does each plant suit its place, and under what condition? Every rule looks at one plant in one
 * place and gives a reason or nothing; table, findings and suggestions read the same reasons. Start
 * with {@link yardloom.planting.suit.SuitCalculator}.
 */
package yardloom.planting.suit;
