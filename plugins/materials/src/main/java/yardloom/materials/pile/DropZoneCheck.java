package yardloom.materials.pile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.DropPile;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** Whether heaps fit, stay off pavement and trees, and can be reached. */
public final class DropZoneCheck implements Check {
  private static final Source TRUCK =
      Source.read(
          "Chip drops need at least 8 by 15 ft of ground and about 20 ft overhead",
          "trade page of a tree-care firm",
          2018,
          "August");
  private static final Length TRUCK_WIDTH = Length.feet(8);
  private static final Length BED_DOWN = Length.feet(15);

  @Override
  public String id() {
    return "materials.drop-zones";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.PILES, YardFacts.LOADS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> findings = new ArrayList<>();
    facts.all(YardFacts.PILES).stream()
        .findFirst()
        .filter(DropPile::fits)
        .ifPresent(first -> others(plan, facts, first).forEach(findings::add));
    for (DropPile pile : facts.all(YardFacts.PILES)) {
      String name = "the drop zone \"" + pile.spot().name() + "\"";
      if (!pile.fits()) {
        findings.add(
            finding(
                    pile,
                    "materials.pile-fits",
                    "A load of "
                        + Say.volume(pile.load().value(), plan.info().units())
                        + " does not fit on "
                        + name
                        + ".",
                    "Give a larger spot, or ask for smaller loads.")
                .marking(pile.ground().minus(pile.spot().shape())));
      }
      keptFree(plan, pile, name, findings);
      room(plan, pile, name).forEach(findings::add);
      if (pile.spot().access().isShortOf(TRUCK_WIDTH)) {
        findings.add(
            finding(
                pile,
                "materials.truck-way",
                "The way to "
                    + name
                    + " is "
                    + Say.depthFor(pile.spot().access(), plan.info().units())
                    + " wide.",
                "A truck needs at least 8 ft (2.4 m); choose another spot or carry from the"
                    + " street where that is allowed."));
      }
      overhead(plan, pile, pile.spot().shape(), name).forEach(findings::add);
      pile.spot().approach().ifPresent(way -> approach(plan, pile, way, name, findings));
      offTheLot(plan, pile, name).forEach(findings::add);
    }
    return findings;
  }

  /** What no drop zone is named for is tipped on the first one, where its heap has to fit too. */
  private static List<Finding> others(Plan plan, Facts facts, DropPile first) {
    List<DropPile> piles = facts.all(YardFacts.PILES);
    List<Finding> findings = new ArrayList<>();
    for (BulkLoads loads : facts.all(YardFacts.LOADS)) {
      Volume load = loads.each().value().min(loads.order().value());
      if (piles.stream().anyMatch(p -> p.isFor(loads.item()))
          || PilePlacer.place(first.spot(), loads.each().map(each -> load)).fits()) {
        continue;
      }
      findings.add(
          finding(
              first,
              "materials.pile-fits",
              "A load of "
                  + Say.volume(load, plan.info().units())
                  + " of "
                  + loads.item()
                  + ", for which no drop zone is named, does not fit on \""
                  + first.spot().name()
                  + "\".",
              "Name a drop zone for it (`dropZone material:`), or ask for smaller loads."));
    }
    return findings;
  }

  /** Neither heap nor truck belongs on a drain field or other ground that stays free. */
  private static void keptFree(Plan plan, DropPile pile, String name, List<Finding> findings) {
    Shape used = pile.spot().approach().orElse(Shape.EMPTY).plus(pile.spot().shape());
    for (Element.KeepOut free : plan.all(Element.KeepOut.class)) {
      if (free.shape().overlaps(used)) {
        findings.add(
            finding(
                    pile,
                    "materials.pile-kept-free",
                    name
                        + " or the way to it lies on \""
                        + free.id().name()
                        + "\", kept free for: "
                        + free.reason()
                        + ".",
                    "Move the spot: heaps and trucks crush what lies below, such as a drain field.")
                .marking(free.shape().and(used)));
      }
    }
  }

  /** Ground for the truck's bed, however small the load. */
  private static List<Finding> room(Plan plan, DropPile pile, String name) {
    LongAxis spot = LongAxis.of(pile.spot().shape());
    if (!spot.width().isShortOf(TRUCK_WIDTH) && !spot.length().isShortOf(BED_DOWN)) {
      return List.of();
    }
    UnitSystem units = plan.info().units();
    return List.of(
        finding(
            pile,
            "materials.drop-ground",
            name
                + " is "
                + Say.distance(spot.width(), units)
                + " by "
                + Say.distance(spot.length(), units)
                + "; a truck tips on "
                + Say.distance(TRUCK_WIDTH, units)
                + " by "
                + Say.distance(BED_DOWN, units)
                + " or more.",
            "Give a larger spot, or ask for bags or a trailer."));
  }

  /** What stands in the truck's way, and what it drives under or over. */
  private static void approach(
      Plan plan, DropPile pile, Shape way, String name, List<Finding> findings) {
    overhead(plan, pile, way, "the truck's way to " + name).forEach(findings::add);
    for (Element e : plan.elements()) {
      boolean hard = e instanceof Element.Building || e instanceof Element.Structure;
      if (hard && e.shape().overlaps(way)) {
        findings.add(
            finding(
                    pile,
                    "materials.truck-way",
                    e.id() + " stands in the truck's way to " + name + ".",
                    "Draw the way round it, or ask for a smaller truck.")
                .marking(e.shape().and(way)));
      }
    }
  }

  private static List<Finding> overhead(Plan plan, DropPile pile, Shape ground, String name) {
    List<Finding> findings = new ArrayList<>();
    for (Element e : plan.elements()) {
      boolean tree = e instanceof Element.Tree;
      boolean utility = e instanceof Element.Utility;
      // The ground of a line holds its clearance.
      if ((tree || utility) && e.shape().overlaps(ground)) {
        findings.add(
            finding(
                pile,
                "materials.pile-overhead",
                e.id() + " crosses " + name + ".",
                utility
                    ? "A raised truck bed must stay clear of overhead lines, and heaps off buried"
                        + " ones: ask the utility, or move the spot."
                    : "A raised truck bed needs about 20 ft (6 m) of room: move the spot."));
      }
    }
    return findings;
  }

  private static List<Finding> offTheLot(Plan plan, DropPile pile, String name) {
    if (plan.lot().isEmpty()) {
      return List.of();
    }
    Shape outside = pile.ground().minus(plan.lot().get().shape());
    if (outside.isEmpty()) {
      return List.of();
    }
    return List.of(
        finding(
                pile,
                "materials.pile-outside",
                "The heap on " + name + " lies partly outside the lot.",
                "Keep the public walk and the gutter free; ask the town before using the street.")
            .marking(outside));
  }

  private static Finding finding(DropPile pile, String rule, String text, String advice) {
    return Finding.of(rule, Severity.WARNING, text, advice, TRUCK).at(pile.spot().place());
  }
}
