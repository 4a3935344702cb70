/**
 * One rule a class: what a plant asks for against what its place has. Start with {@link
 * yardloom.planting.suit.rule.SuitRule}.
 */
package yardloom.planting.suit.rule;
