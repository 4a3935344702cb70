package yardloom.site.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Covering;
import yardloom.site.element.Show;

/** The ground round trunks in which nobody digs or paves. */
public final class TreeRootRules {
  private static final Area TRIFLE = Area.squareMetres(0.01);
  private static final double USUAL_FACTOR = 12;

  private static final Source USUAL_PROTECTION =
      Source.commonPractice(
          "a tree's critical roots reach about 12 trunk diameters (1 ft for each inch)");

  private TreeRootRules() {}

  /** Radius of the protected ground over the diameter of the trunk. */
  public static double factor(Plan plan) {
    return plan.attributes()
        .get(TreeWords.TreeProtection.KEY)
        .map(TreeWords.TreeProtection::factor)
        .orElse(USUAL_FACTOR);
  }

  /** The protected ground of a tree; empty if its trunk was not measured. */
  public static Optional<Shape> zone(Plan plan, Element.Tree tree) {
    Length radius = tree.trunk().times(factor(plan));
    return radius.metres() > 0 ? Optional.of(Shape.circle(tree.at(), radius)) : Optional.empty();
  }

  public static List<Finding> treeRoots(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      zone(plan, tree).ifPresent(zone -> inZone(plan, tree, zone, findings));
    }
    return findings;
  }

  private static void inZone(Plan plan, Element.Tree tree, Shape zone, List<Finding> findings) {
    for (Element element : Covering.elements(plan)) {
      boolean digs =
          element instanceof Element.Structure
              || element instanceof Element.Paving
              || element instanceof Element.Bed;
      Shape both = digs ? element.shape().and(zone) : Shape.EMPTY;
      if (both.area().compareTo(TRIFLE) > 0) {
        findings.add(root(plan, tree, element, both));
      }
    }
  }

  private static Finding root(Plan plan, Element.Tree tree, Element element, Shape both) {
    boolean bed = element instanceof Element.Bed;
    Source source =
        plan.attributes()
            .get(TreeWords.TreeProtection.KEY)
            .map(t -> Source.plan("tree protection by " + t.rule() + "; verify locally"))
            .orElse(USUAL_PROTECTION);
    return Finding.of(
            "site.tree-roots",
            bed ? Severity.NOTE : Severity.WARNING,
            Show.area(plan, both.area())
                + " lie within "
                + Show.length(plan, tree.trunk().times(factor(plan)))
                + " of the trunk of "
                + tree.id(),
            bed
                ? "do not dig there; lay mulch thinly and keep it off the trunk"
                : "keep digging, paving and storage out, or ask an arborist",
            source)
        .about(element.id(), element.place())
        .marking(both);
  }
}
