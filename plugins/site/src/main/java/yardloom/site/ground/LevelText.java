package yardloom.site.ground;

import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;

/** Levels as drawings write them: tenths of a foot, or centimetres. */
final class LevelText {
  private LevelText() {}

  static String of(Plan plan, Length level) {
    return Say.of(Measure.LENGTH, level, plan.info().units());
  }
}
