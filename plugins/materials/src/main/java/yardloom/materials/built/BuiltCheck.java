package yardloom.materials.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.built.Barrier;
import yardloom.facts.built.Flight;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.built.formula.WallParts;

/** Says what of the new walls, fences, sheds and steps asks for a permit or a licensed designer. */
public final class BuiltCheck implements Check {
  private static final Length DESIGNER = Length.feet(4);
  private static final Length PERMIT_FENCE = Length.feet(6);
  private static final Area PERMIT_SHED = Area.squareFeet(120);
  private static final Length LEAST_TREAD = Length.inches(11);
  private static final double LEAST_STRIDE_IN = 24;
  private static final double MOST_STRIDE_IN = 28;

  private static final Source CODE =
      Source.read(
          "Fence permit: walls over four feet from the footing, fences and walls over six feet",
          "code of an Iowa city",
          2005,
          "14-8B-4");
  private static final Source SHEDS =
      Source.memory(
          "Small detached sheds are free of a building permit up to 120 or 200 sq ft",
          "recalled from building codes",
          0,
          "");

  @Override
  public String id() {
    return "materials.built";
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (Element element : plan.elements()) {
      if (!element.stands()) {
        said(element, plan.info().units())
            .map(f -> f.about(element.id(), element.place()))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> said(Element element, UnitSystem units) {
    if (element instanceof Element.Fence fence) {
      Optional<Barrier> how = fence.attributes().get(Barrier.KEY);
      return how.filter(b -> b.made().isWall())
          .map(b -> wall(fence, b, units))
          .orElseGet(() -> how.filter(b -> b.made().isFence()).flatMap(b -> fence(fence, units)));
    }
    if (element instanceof Element.Paving paving) {
      return paving.attributes().get(Flight.KEY).flatMap(f -> steps(f, units));
    }
    if (element instanceof Element.Structure s
        && s.height().metres() > 0
        && s.shape().area().compareTo(PERMIT_SHED) > 0) {
      return Optional.of(
          Finding.of(
              id(),
              Severity.NOTE,
              "covers more ground than a shed may without a permit in many places",
              "Ask the building office before the base is dug.",
              SHEDS));
    }
    return Optional.empty();
  }

  private Optional<Finding> wall(Element.Fence wall, Barrier how, UnitSystem units) {
    Length whole = WallParts.whole(wall.height(), how.unitHeight());
    if (whole.compareTo(DESIGNER) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            id(),
            Severity.WARNING,
            "is "
                + Say.distance(whole, units)
                + " high from the foot of its buried course; above "
                + Say.distance(DESIGNER, units)
                + " a wall needs a permit and a licensed designer in most places",
            "Have it designed, or step the bank in two lower walls; the blocks billed here are a"
                + " first count, not a design.",
            CODE));
  }

  private Optional<Finding> fence(Element.Fence fence, UnitSystem units) {
    if (fence.height().compareTo(PERMIT_FENCE) <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "is higher than "
                + Say.distance(PERMIT_FENCE, units)
                + ", which needs a permit in many places",
            "Ask the building office before posts are set.",
            CODE));
  }

  private Optional<Finding> steps(Flight flight, UnitSystem units) {
    double strideIn = flight.step().times(2).plus(flight.tread()).inches();
    boolean easy =
        strideIn >= LEAST_STRIDE_IN
            && strideIn <= MOST_STRIDE_IN
            && !flight.tread().isShortOf(LEAST_TREAD);
    if (easy || flight.risers() == 1) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            id(),
            Severity.WARNING,
            "has "
                + flight.risers()
                + " steps of "
                + Say.depth(flight.step(), units)
                + " with treads of "
                + Say.depth(flight.tread(), units)
                + ", which trip people",
            "Two risers and a tread should make 26 or 27 in (66 to 69 cm): give the line another"
                + " length.",
            Grounds.STEPS));
  }
}
