package yardloom.planting.suit.rule;

import java.util.Comparator;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Does the grown plant keep clear of walls and of the lot line? Looked at are perennials that grow
 * at least a yard wide and are not trained.
 *
 * <p>References: common practice: half the mature spread from the trunk to a wall; what hangs over
 * a line is a matter between neighbours.
 */
public final class LineRule implements SuitRule {
  private static final Length SMALL = Length.feet(3);
  private static final Length ROUNDING = Length.millimetres(5);
  private static final Source WALL =
      Source.commonPractice("a trunk keeps half its mature spread from walls");
  private static final Source LINE =
      Source.commonPractice("a grown plant keeps within the lot line");

  @Override
  public String id() {
    return "room";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    if (plant.trained()
        || plant.at().isEmpty()
        || plant.plant().growth().season().isAnnual()
        || plant.width().compareTo(SMALL) < 0) {
      return Optional.empty();
    }
    Length radius = plant.width().div(2);
    Optional<Reason> wall = wall(plant, yard, radius);
    return wall.isPresent() ? wall : line(plant, yard, radius);
  }

  private Optional<Reason> wall(Candidate plant, Yard yard, Length radius) {
    Optional<Element.Building> nearest =
        yard.plan().all(Element.Building.class).stream()
            .min(Comparator.comparing(b -> distance(plant, b.shape())));
    return nearest
        .filter(b -> distance(plant, b.shape()).plus(ROUNDING).compareTo(radius) < 0)
        .map(
            b ->
                new Reason(
                    id(),
                    Suits.FITS_IF,
                    "grown, it is "
                        + ReasonWords.both(yard.plan(), plant.width())
                        + " wide and stands "
                        + ReasonWords.both(yard.plan(), distance(plant, b.shape()))
                        + " from "
                        + b.id(),
                    "train it flat or cut it back each year, or plant it "
                        + ReasonWords.both(yard.plan(), radius)
                        + " from the wall",
                    WALL));
  }

  private Optional<Reason> line(Candidate plant, Yard yard, Length radius) {
    return yard.plan()
        .lot()
        .map(lot -> lot.shape().jts().getBoundary())
        .map(line -> plant.at().stream().map(at -> to(line, at)).min(Length::compareTo).get())
        .filter(distance -> distance.plus(ROUNDING).compareTo(radius) < 0)
        .map(
            distance ->
                new Reason(
                    id(),
                    Suits.FITS_IF,
                    "grown, it is "
                        + ReasonWords.both(yard.plan(), plant.width())
                        + " wide and hangs "
                        + ReasonWords.both(yard.plan(), radius.minus(distance))
                        + " over the lot line",
                    "cut it back each year and tell the neighbour, or plant it "
                        + ReasonWords.both(yard.plan(), radius)
                        + " from the line",
                    LINE));
  }

  private static Length distance(Candidate plant, Shape shape) {
    return plant.at().stream().map(shape::distance).min(Comparator.naturalOrder()).get();
  }

  private static Length to(Geometry line, Point at) {
    return Length.metres(line.distance(line.getFactory().createPoint(at.coordinate())));
  }
}
