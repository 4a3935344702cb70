package yardloom.site.setback;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;

/**
 * Trees and food near the drain field of a septic system. That nothing stands on the field itself
 * is the rule of keep-outs.
 */
public final class DrainFieldRules {
  private static final Source TREES =
      Source.read(
          "Landscaping over septic drain fields",
          "North Carolina Cooperative Extension, Chatham County",
          0,
          "trees as far away as they grow high");

  private static final Source FOOD =
      Source.read(
          "Septic systems and vegetable gardens",
          "Clemson Cooperative Extension, Home and Garden Information Center",
          0,
          "10 ft");

  private DrainFieldRules() {}

  public static List<Finding> near(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.KeepOut field : plan.all(Element.KeepOut.class)) {
      field.attributes().get(DrainField.KEY).ifPresent(d -> near(plan, field, d, findings));
    }
    return findings;
  }

  private static void near(
      Plan plan, Element.KeepOut field, DrainField rule, List<Finding> findings) {
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      Length away = field.shape().distance(tree.at());
      if (away.isShortOf(tree.height())) {
        findings.add(finding(plan, tree, field, away, tree.height(), "its height", TREES));
      }
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Length away = field.shape().distance(bed.shape());
      if (bed.use() == Element.BedUse.ANNUAL && away.isShortOf(rule.beds())) {
        findings.add(finding(plan, bed, field, away, rule.beds(), "the distance for food", FOOD));
      }
    }
  }

  private static Finding finding(
      Plan plan,
      Element near,
      Element.KeepOut field,
      Length away,
      Length wanted,
      String what,
      Source source) {
    return Finding.of(
            "site.drain-field",
            Severity.WARNING,
            "stands "
                + Show.length(plan, away)
                + " from the drain field \""
                + field.id().name()
                + "\", less than "
                + what
                + " ("
                + Show.length(plan, wanted)
                + ")",
            "move it to at least "
                + Show.length(plan, wanted)
                + " from the field; the health department decides",
            source)
        .about(near.id(), near.place());
  }
}
