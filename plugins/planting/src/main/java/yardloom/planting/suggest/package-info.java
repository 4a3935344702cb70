/**
 * Which kinds would work together in a bed? The wishes of the plan, the kinds that suit the place,
 * and an exact search for the set that brings most months of harvest. Start with {@link
 * yardloom.planting.suggest.SuggestCalculator}.
 */
package yardloom.planting.suggest;
