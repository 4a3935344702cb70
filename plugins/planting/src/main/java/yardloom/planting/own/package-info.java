/**
 * How does a user name a plant that the catalogue lacks, or has otherwise than it grows here?
 * Columns name their unit. Start at {@link yardloom.planting.own.OwnPlant}.
 */
package yardloom.planting.own;
