package yardloom.sheet.label;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Which of the labels of a drawing a reader could take a place for. */
final class Rivals {
  private static final double STEP_MM = 3;

  private final List<LabelRequest> all;

  Rivals(List<LabelRequest> all) {
    this.all = List.copyOf(all);
  }

  /** Whether no other label could claim the place: what that names is further off. */
  boolean isNearest(Box box, LabelRequest request) {
    double own = request.distance(box);
    return rivals(request)
        .filter(other -> !request.isNumber() || other.isNumber())
        .allMatch(other -> other.isBeyond(box, own) || other.distance(box) > own);
  }

  /** Ground that another label names, unless what this one names lies in it as well. */
  boolean isOnForeignGround(Box box, LabelRequest request) {
    return !request.isNumber() && isOnGroundOfOthers(box, request);
  }

  /** A house is no place for the name of what stands at its wall. */
  boolean isInSolidGround(Box box, LabelRequest request) {
    return all.stream()
        .filter(r -> r.solid() && isRival(r, request))
        .flatMap(r -> r.ground().stream())
        .anyMatch(g -> g.distance(box) == 0 && !isWellInside(g, request.anchor()));
  }

  private boolean isOnGroundOfOthers(Box box, LabelRequest request) {
    for (LabelRequest r : all) {
      if (r.ground().isPresent() && !box.isFurtherThan(0, r.ground().get().bounds())) {
        Footprint g = r.ground().get();
        if (isRival(r, request) && g.distance(box) == 0 && !isWellInside(g, request.anchor())) {
          return true;
        }
      }
    }
    return false;
  }

  /** How much of a line lies on ground that other labels name, in steps. */
  double mmOverOthers(Xy from, Xy to, LabelRequest request) {
    List<Footprint> grounds =
        rivals(request)
            .flatMap(r -> r.ground().stream())
            .filter(g -> !isWellInside(g, request.anchor()))
            .toList();
    int steps = 1 + (int) (from.distance(to) / STEP_MM);
    double over = 0;
    for (int i = 0; i < steps; i++) {
      Xy at = from.towards(to, (i + 0.5) / steps);
      over += grounds.stream().anyMatch(g -> g.contains(at)) ? from.distance(to) / steps : 0;
    }
    return over;
  }

  /** A tap on a wall is not in the house. */
  private static boolean isWellInside(Footprint ground, Xy point) {
    return ground.contains(point)
        && ground.nearest(point).distance(point) > LedPlaces.INTO_GROUND_MM;
  }

  private Stream<LabelRequest> rivals(LabelRequest request) {
    return all.stream().filter(r -> isRival(r, request));
  }

  private static boolean isRival(LabelRequest r, LabelRequest request) {
    return (!r.isCentred() || r.ground().isPresent())
        && !r.anchor().equals(request.anchor())
        && !isSame(r.ground(), request.ground());
  }

  private static boolean isSame(Optional<Footprint> a, Optional<Footprint> b) {
    return a.isPresent() && a.equals(b);
  }
}
