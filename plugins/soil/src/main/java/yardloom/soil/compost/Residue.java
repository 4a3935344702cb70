package yardloom.soil.compost;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Volume;

/**
 * What a season of weeding or pruning brings.
 *
 * @param material a name of the feedstock table
 * @param volume loose, per season
 */
public record Residue(String material, Volume volume, SourceRef place) {
  /** On the plan, any number: prunings and weeds of a season. */
  public static final AttributeKey<Residue> KEY = new AttributeKey<>("soil.residue", Residue.class);
}
