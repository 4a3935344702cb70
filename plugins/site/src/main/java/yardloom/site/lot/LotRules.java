package yardloom.site.lot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.element.Show;
import yardloom.site.element.Sources;

/** Rules about the lot, its sides and what must stay inside. */
public final class LotRules {
  /** Ground outside that is tape error rather than a mistake. */
  private static final Area TRIFLE = Area.squareMetres(0.01);

  private LotRules() {}

  public static List<Finding> bedOutsideLot(Plan plan) {
    return outside(
        plan,
        plan.all(Element.Bed.class),
        "site.bed-outside-lot",
        Severity.ERROR,
        "move or trim the bed; `shape & lot.shape` keeps the part inside");
  }

  public static List<Finding> buildingOutsideLot(Plan plan) {
    List<Element> built = new ArrayList<>(plan.all(Element.Structure.class));
    plan.all(Element.Building.class).stream().filter(b -> !b.neighbour()).forEach(built::add);
    return outside(
        plan,
        built,
        "site.building-outside-lot",
        Severity.ERROR,
        "check the measurements; a house of the neighbours needs `neighbour: true`");
  }

  public static List<Finding> groundOutsideLot(Plan plan) {
    return outside(
        plan,
        plan.all(Element.MulchedGround.class),
        "site.ground-outside-lot",
        Severity.WARNING,
        "trim it; `shape & lot.shape` keeps the part inside");
  }

  public static List<Finding> wayOutsideLot(Plan plan) {
    List<Element> ways = new ArrayList<>(plan.all(Element.Path.class));
    ways.addAll(plan.all(Element.Paving.class));
    return outside(
        plan,
        ways,
        "site.way-outside-lot",
        Severity.NOTE,
        "work on the street's land needs leave of its owner, in most places a permit");
  }

  private static List<Finding> outside(
      Plan plan, List<? extends Element> elements, String rule, Severity severity, String advice) {
    Optional<Lot> lot = plan.lot();
    List<Finding> findings = new ArrayList<>();
    for (Element element : lot.isPresent() ? elements : List.<Element>of()) {
      Shape beyond = element.shape().minus(lot.get().shape());
      if (beyond.area().compareTo(TRIFLE) > 0) {
        findings.add(
            Finding.of(
                    rule,
                    severity,
                    Show.area(plan, beyond.area())
                        + " of "
                        + Show.area(plan, element.shape().area())
                        + " lie outside the lot",
                    advice,
                    Sources.PLAN)
                .about(element.id(), element.place())
                .marking(beyond));
      }
    }
    return findings;
  }

  public static List<Finding> sideRoles(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.lot()
        .ifPresent(
            lot -> {
              String unstated =
                  lot.edges().stream()
                      .filter(e -> e.role() == EdgeRole.UNSTATED)
                      .map(Lot.Edge::name)
                      .collect(Collectors.joining(", "));
              if (!unstated.isEmpty()) {
                findings.add(
                    Finding.of(
                            "site.side-role",
                            Severity.NOTE,
                            "nothing is said about the lot side(s) " + unstated,
                            "give each a role and the setback of the local code, such as"
                                + " side('south', role: 'front', setback: "
                                + (plan.info().units() == UnitSystem.US ? "25.ft" : "7.5.m")
                                + ")",
                            Sources.PLAN)
                        .at(lot.place()));
              }
            });
    return findings;
  }
}
