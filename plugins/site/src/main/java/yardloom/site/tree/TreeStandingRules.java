package yardloom.site.tree;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Standing;
import yardloom.kernel.source.Source;
import yardloom.site.element.Show;

/** Says of which trees it had to be guessed whether they stand already. */
public final class TreeStandingRules {
  private static final Source GUESS =
      Source.commonPractice("trees with trunks above 4 in (10 cm) are not planted by hand");

  private TreeStandingRules() {}

  public static List<Finding> unsaid(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      if (!tree.standing().said()) {
        findings.add(unsaid(plan, tree));
      }
    }
    return findings;
  }

  private static Finding unsaid(Plan plan, Element.Tree tree) {
    boolean measured = tree.trunk().metres() > 0;
    String trunk =
        measured
            ? "its trunk of " + Show.small(plan, tree.trunk()) + " is "
            : "no trunk was measured, so it is not known to be ";
    String than =
        (measured && !tree.stands() ? "not thicker than " : "thicker than ")
            + Show.small(plan, Standing.THICKEST_PLANTED);
    return Finding.of(
            "site.tree-standing",
            Severity.NOTE,
            "taken as "
                + (tree.stands() ? "standing already: " : "a tree to plant: ")
                + trunk
                + than,
            "write `standing: true` if it is there, `standing: false` if it is to be bought and"
                + " planted",
            GUESS)
        .about(tree.id(), tree.place());
  }
}
