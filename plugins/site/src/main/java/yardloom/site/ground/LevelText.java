package yardloom.site.ground;

import java.util.Locale;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Levels as drawings write them: tenths of a foot, or centimetres. */
final class LevelText {
  private LevelText() {}

  static String of(Plan plan, Length level) {
    return plan.info().units() == UnitSystem.US
        ? String.format(Locale.ROOT, "%.1f ft", level.feet())
        : String.format(Locale.ROOT, "%.2f m", level.metres());
  }
}
