package yardloom.kernel.rules;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;

/** Rules about paths. */
final class PathRules {
  private PathRules() {}

  /** The least width of a path by its use. */
  static Length least(PathUse use) {
    return switch (use) {
      case FOOT -> Length.inches(18);
      case BARROW -> Length.inches(30);
      case ACCESSIBLE -> Length.inches(36);
    };
  }

  static List<Finding> width(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      Length least = least(path.use());
      if (path.width().metres() < least.metres() - 1e-9) {
        boolean accessible = path.use() == PathUse.ACCESSIBLE;
        Source source = accessible ? Sources.ACCESSIBLE_WIDTH : Sources.PATH_WIDTH;
        findings.add(
            Finding.of(
                    "kernel.path-width",
                    Severity.WARNING,
                    Show.small(plan, path.width())
                        + " wide; "
                        + Choices.text(path.use())
                        + " use needs at least "
                        + Show.small(plan, least),
                    accessible
                        ? "widen it; accessibility rules bind public places and are good practice"
                            + " at home"
                        : "widen it, or say that it is for walking only",
                    source)
                .about(path.id(), path.place()));
      }
    }
    return findings;
  }
}
