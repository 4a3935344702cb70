package yardloom.site.setback;

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
import yardloom.site.element.Show;
import yardloom.site.setback.Restriction.Subject;

/** Rules that the plan states about ground, held against what stands on it. */
public final class RestrictionRules {
  private static final Area TRIFLE = Area.squareMetres(0.01);

  private RestrictionRules() {}

  public static List<Finding> restrictions(Plan plan) {
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
                "site.restriction",
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
}
