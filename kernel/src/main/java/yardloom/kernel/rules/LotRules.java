package yardloom.kernel.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Setbacks;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;

/** Rules about the lot, its sides and what must stay inside. */
final class LotRules {
  /** Ground outside that is tape error rather than a mistake. */
  private static final Area TRIFLE = Area.squareMetres(0.01);

  private LotRules() {}

  static List<Finding> bedOutsideLot(Plan plan) {
    return outside(
        plan,
        plan.all(Element.Bed.class),
        "kernel.bed-outside-lot",
        Severity.ERROR,
        "move or trim the bed; `shape & lot.shape` keeps the part inside");
  }

  static List<Finding> buildingOutsideLot(Plan plan) {
    List<Element> built = new ArrayList<>(plan.all(Element.Structure.class));
    plan.all(Element.Building.class).stream().filter(b -> !b.neighbour()).forEach(built::add);
    return outside(
        plan,
        built,
        "kernel.building-outside-lot",
        Severity.ERROR,
        "check the measurements; a house of the neighbours needs `neighbour: true`");
  }

  static List<Finding> wayOutsideLot(Plan plan) {
    List<Element> ways = new ArrayList<>(plan.all(Element.Path.class));
    ways.addAll(plan.all(Element.Paving.class));
    return outside(
        plan,
        ways,
        "kernel.way-outside-lot",
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

  static List<Finding> sideRoles(Plan plan) {
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
                    placed(
                        lot,
                        Finding.of(
                            "kernel.side-role",
                            Severity.NOTE,
                            "nothing is said about the lot side(s) " + unstated,
                            "give each a role and the setback of the local code, such as"
                                + " side('south', role: 'front', setback: 25.ft)",
                            Sources.PLAN)));
              }
            });
    return findings;
  }

  static List<Finding> setbackRoom(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.lot()
        .ifPresent(
            lot -> {
              List<Setbacks.Side> sides = LotGround.sides(lot);
              if (Setbacks.buildable(lot.shape(), sides).isEmpty()) {
                String eaters =
                    Setbacks.culprits(lot.shape(), sides).stream()
                        .map(s -> s.name() + " (" + Show.length(plan, s.distance()) + ")")
                        .collect(Collectors.joining(", "));
                findings.add(
                    placed(
                        lot,
                        Finding.of(
                            "kernel.setback-room",
                            Severity.ERROR,
                            "the setbacks leave no ground; the lot is taken up by those from "
                                + eaters,
                            "check distances and units with the local code",
                            Sources.PLAN)));
              }
            });
    return findings;
  }

  private static Finding placed(Lot lot, Finding f) {
    return new Finding(
        f.rule(),
        f.severity(),
        f.element(),
        lot.place(),
        f.text(),
        f.advice(),
        f.source(),
        f.where());
  }

  static List<Finding> inSetback(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.lot()
        .ifPresent(
            lot -> {
              for (Setbacks.Taken taken : Setbacks.taken(lot.shape(), LotGround.sides(lot))) {
                for (Element element : keepingOut(plan)) {
                  inSetback(plan, lot, taken, element).ifPresent(findings::add);
                }
              }
            });
    return findings;
  }

  private static List<Element> keepingOut(Plan plan) {
    List<Element> elements = new ArrayList<>(plan.all(Element.Structure.class));
    plan.all(Element.Building.class).stream().filter(b -> !b.neighbour()).forEach(elements::add);
    elements.addAll(plan.all(Element.Bed.class));
    return elements;
  }

  private static Optional<Finding> inSetback(
      Plan plan, Lot lot, Setbacks.Taken taken, Element element) {
    Shape within = element.shape().and(taken.ground());
    if (within.area().compareTo(TRIFLE) <= 0) {
      return Optional.empty();
    }
    boolean bed = element instanceof Element.Bed;
    String rule =
        lot.edges().stream()
            .filter(e -> e.name().equals(taken.side().name()))
            .map(Lot.Edge::rule)
            .findFirst()
            .orElse("");
    return Optional.of(
        Finding.of(
                bed ? "kernel.bed-setback" : "kernel.building-setback",
                Severity.WARNING,
                Show.area(plan, within.area())
                    + " lie within the setback of "
                    + Show.length(plan, taken.side().distance())
                    + " from "
                    + taken.side().name(),
                bed
                    ? "many codes allow low planting in a setback; ask, or move the bed"
                    : "ask the local office whether it may stand there",
                Sources.setback(rule))
            .about(element.id(), element.place())
            .marking(within));
  }
}
