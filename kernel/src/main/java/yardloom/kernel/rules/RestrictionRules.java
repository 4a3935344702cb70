package yardloom.kernel.rules;

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
import yardloom.kernel.words.Restriction;
import yardloom.kernel.words.Restriction.Subject;
import yardloom.kernel.words.RestrictionWords.TreeProtection;

/** Rules that the plan states about ground, held against what stands on it. */
final class RestrictionRules {
  private static final Area TRIFLE = Area.squareMetres(0.01);
  private static final double USUAL_FACTOR = 12;

  private static final Source USUAL_PROTECTION =
      Source.commonPractice(
          "a tree's critical roots reach about 12 trunk diameters (1 ft for each inch)");

  private RestrictionRules() {}

  static List<Finding> restrictions(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (var entry : plan.attributes().all(Restriction.KEY)) {
      for (Element element : plan.elements()) {
        held(plan, entry.value(), element).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> held(Plan plan, Restriction rule, Element element) {
    Optional<Subject> subject = subject(element);
    if (subject.isEmpty() || !rule.bars().contains(subject.get())) {
      return Optional.empty();
    }
    Shape both = element.shape().and(rule.ground());
    if (both.area().compareTo(TRIFLE) <= 0) {
      return Optional.empty();
    }
    boolean bed = subject.get() == Subject.BEDS;
    if (rule.band().isPresent() && !bed && !fills(element, rule.band().get())) {
      return Optional.empty();
    }
    String limit =
        rule.band()
            .map(
                b ->
                    "; nothing may stand there between "
                        + Show.small(plan, b.from())
                        + " and "
                        + Show.length(plan, b.to()))
            .orElse("");
    boolean low = bed && rule.band().isPresent();
    return Optional.of(
        Finding.of(
                "kernel.restriction",
                low ? Severity.NOTE : Severity.ERROR,
                Show.area(plan, both.area()) + " lie in the " + rule.reason() + limit,
                low ? "choose plants that stay below it" : "move it, or ask for leave in writing",
                rule.rule().isBlank()
                    ? Source.plan("rule stated in the plan; verify locally")
                    : Source.plan("rule by " + rule.rule() + "; verify locally"))
            .about(element.id(), element.place())
            .marking(both));
  }

  private static Optional<Subject> subject(Element element) {
    if (element instanceof Element.Building b) {
      return b.neighbour() ? Optional.empty() : Optional.of(Subject.BUILDINGS);
    }
    if (element instanceof Element.Structure) {
      return Optional.of(Subject.BUILDINGS);
    }
    if (element instanceof Element.Fence) {
      return Optional.of(Subject.FENCES);
    }
    if (element instanceof Element.Tree) {
      return Optional.of(Subject.TREES);
    }
    return element instanceof Element.Bed ? Optional.of(Subject.BEDS) : Optional.empty();
  }

  private static boolean fills(Element element, Restriction.Band band) {
    if (element instanceof Element.Tree tree) {
      return tree.crownBase().compareTo(band.to()) < 0 && tree.height().compareTo(band.from()) > 0;
    }
    Length height =
        element instanceof Element.Building b
            ? b.ridgeHeight()
            : element instanceof Element.Structure s
                ? s.height()
                : ((Element.Fence) element).height();
    return height.compareTo(band.from()) > 0;
  }

  static List<Finding> treeRoots(Plan plan) {
    Optional<TreeProtection> stated = plan.attributes().get(TreeProtection.KEY);
    double factor = stated.map(TreeProtection::factor).orElse(USUAL_FACTOR);
    Source source =
        stated
            .map(t -> Source.plan("tree protection by " + t.rule() + "; verify locally"))
            .orElse(USUAL_PROTECTION);
    List<Finding> findings = new ArrayList<>();
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      if (tree.trunk().metres() > 0) {
        Length radius = tree.trunk().times(factor);
        Shape zone = Shape.circle(tree.at(), radius);
        for (Element element : LotGround.covering(plan)) {
          boolean digs =
              element instanceof Element.Structure
                  || element instanceof Element.Paving
                  || element instanceof Element.Bed;
          Shape both = digs ? element.shape().and(zone) : Shape.EMPTY;
          if (both.area().compareTo(TRIFLE) > 0) {
            findings.add(root(plan, tree, radius, element, both, source));
          }
        }
      }
    }
    return findings;
  }

  private static Finding root(
      Plan plan, Element.Tree tree, Length radius, Element element, Shape both, Source source) {
    boolean bed = element instanceof Element.Bed;
    return Finding.of(
            "kernel.tree-roots",
            bed ? Severity.NOTE : Severity.WARNING,
            Show.area(plan, both.area())
                + " lie within "
                + Show.length(plan, radius)
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
