package yardloom.site.path;

import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.unit.Length;

/**
 * The width a path gets when the plan gives none. Published widths disagree, so these are defaults
 * to override, not rules: 24 in for comfortable walking, 36 in for a wheelbarrow, 48 in for a
 * wheelchair (garden pages read for this project give 24, 30 to 36 and 36 to 48 in).
 */
public final class PathWidths {
  private PathWidths() {}

  static Length usual(PathUse use) {
    return switch (use) {
      case FOOT -> Length.inches(24);
      case BARROW -> Length.inches(36);
      case ACCESSIBLE -> Length.inches(48);
    };
  }
}
