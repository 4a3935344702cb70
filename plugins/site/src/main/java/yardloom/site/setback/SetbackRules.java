package yardloom.site.setback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Setbacks;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;
import yardloom.site.element.Sources;

/** Whether setbacks leave room, and what stands in them. */
public final class SetbackRules {
  private static final Area TRIFLE = Area.squareMetres(0.01);

  private SetbackRules() {}

  public static List<Finding> room(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.lot()
        .ifPresent(
            lot -> {
              List<Setbacks.Side> sides = lot.setbackSides();
              if (Setbacks.buildable(lot.shape(), sides).isEmpty()) {
                String eaters =
                    Setbacks.culprits(lot.shape(), sides).stream()
                        .map(s -> s.name() + " (" + asked(plan, lot, s) + ")")
                        .collect(Collectors.joining(", "));
                findings.add(
                    Finding.of(
                            "site.setback-room",
                            Severity.ERROR,
                            "the setbacks leave no ground; the lot is taken up by those from "
                                + eaters,
                            "check distances and units with the local code",
                            Sources.PLAN)
                        .at(lot.place()));
              }
            });
    return findings;
  }

  private static String asked(Plan plan, Lot lot, Setbacks.Side side) {
    String rule = rule(lot, side.name());
    return Show.length(plan, side.distance()) + (rule.isBlank() ? "" : " by " + rule);
  }

  private static String rule(Lot lot, String side) {
    return lot.edges().stream()
        .filter(e -> e.name().equals(side))
        .map(Lot.Edge::rule)
        .findFirst()
        .orElse("");
  }

  public static List<Finding> within(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.lot()
        .ifPresent(
            lot -> {
              for (Setbacks.Taken taken : Setbacks.taken(lot.shape(), lot.setbackSides())) {
                Optional<SetbackRule> rule = SetbackGround.own(plan, taken.side().name());
                for (Element element : keepingOut(plan)) {
                  within(plan, lot, taken, rule, element).ifPresent(findings::add);
                }
              }
              for (SetbackGround.Banded banded : SetbackGround.banded(plan, lot)) {
                keepingOut(plan).forEach(e -> within(plan, banded, e).ifPresent(findings::add));
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

  /** What of an element a setback looks at: its walls, or its eaves where the code says so. */
  private static Shape measured(Element element, Optional<SetbackRule> rule) {
    boolean eaves = rule.filter(r -> r.to() == SetbackRule.MeasuredTo.EAVES).isPresent();
    return eaves && element instanceof Element.Building b && b.overhang().metres() > 0
        ? b.shape().grown(b.overhang())
        : element.shape();
  }

  private static Optional<Finding> within(
      Plan plan, Lot lot, Setbacks.Taken taken, Optional<SetbackRule> rule, Element element) {
    Shape within = measured(element, rule).and(taken.ground());
    if (within.area().compareTo(TRIFLE) <= 0) {
      return Optional.empty();
    }
    boolean bed = element instanceof Element.Bed;
    String from =
        rule.map(r -> SetbackGround.distance(plan, r) + " from " + r.side())
            .orElseGet(
                () -> Show.length(plan, taken.side().distance()) + " from " + taken.side().name());
    return Optional.of(
        Finding.of(
                bed ? "site.bed-setback" : "site.building-setback",
                Severity.WARNING,
                Show.area(plan, within.area()) + " lie within the setback of " + from,
                bed
                    ? "many codes allow low planting in a setback; ask, or move the bed"
                    : "ask the local office whether it may stand there",
                Sources.setback(rule(lot, taken.side().name())))
            .about(element.id(), element.place())
            .marking(within));
  }

  private static Optional<Finding> within(Plan plan, SetbackGround.Banded banded, Element element) {
    SetbackRule rule = banded.rule();
    Restriction.Band band = rule.band().orElseThrow();
    Shape within = measured(element, Optional.of(rule)).and(banded.ground());
    Length top = element instanceof Element.Building b ? b.ridgeHeight() : height(element);
    if (element instanceof Element.Bed
        || within.area().compareTo(TRIFLE) <= 0
        || top.compareTo(band.from()) <= 0) {
      return Optional.empty();
    }
    boolean roofOnly =
        element instanceof Element.Building b && b.eavesHeight().compareTo(band.from()) <= 0;
    return Optional.of(
        Finding.of(
                "site.building-setback",
                Severity.WARNING,
                Show.area(plan, within.area())
                    + " lie within the setback of "
                    + SetbackGround.distance(plan, rule)
                    + " from "
                    + rule.side()
                    + " that holds "
                    + SetbackGround.heights(plan, band)
                    + (roofOnly
                        ? "; the walls stay below, the roof rises to "
                        : "; it is as high as ")
                    + Show.length(plan, top),
                roofOnly
                    ? "find out how high the roof is there, and ask the local office"
                    : "lower it there, step it back, or ask the local office",
                Sources.setback(rule.rule()))
            .about(element.id(), element.place())
            .marking(within));
  }

  private static Length height(Element element) {
    return element instanceof Element.Structure s ? s.height() : Length.ZERO;
  }
}
