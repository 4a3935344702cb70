package yardloom.site.setback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Setbacks;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.site.element.Show;

/** The ground of setbacks that hold only at some heights, and the words for all setbacks. */
public final class SetbackGround {
  /** Heights above this are no limit. */
  private static final Length NO_LIMIT = Length.metres(99);

  /** A setback that holds only at some heights, with all ground of the lot that it takes. */
  public record Banded(SetbackRule rule, Shape ground) {}

  private SetbackGround() {}

  /** The rule of a side that holds at all heights. */
  static Optional<SetbackRule> own(Plan plan, String side) {
    return plan.attributes().all(SetbackRule.KEY).stream()
        .map(Attributes.Entry::value)
        .filter(r -> r.side().equals(side) && r.band().isEmpty())
        .findFirst();
  }

  /** All setbacks that hold only at some heights, as they were written. */
  public static List<Banded> banded(Plan plan, Lot lot) {
    List<Banded> found = new ArrayList<>();
    for (Attributes.Entry<SetbackRule> entry : plan.attributes().all(SetbackRule.KEY)) {
      SetbackRule rule = entry.value();
      if (rule.band().isPresent()) {
        List<Setbacks.Side> alone =
            lot.edges().stream()
                .map(
                    e ->
                        new Setbacks.Side(
                            e.name(),
                            e.line(),
                            e.arc(),
                            e.name().equals(rule.side()) ? rule.fromLotLine() : Length.ZERO))
                .toList();
        for (Setbacks.Taken taken : Setbacks.taken(lot.shape(), alone)) {
          found.add(new Banded(rule, taken.ground()));
        }
      }
    }
    return found;
  }

  /** {@code setback from south (front, 25.00 ft from the curb)}. */
  static String name(Plan plan, Lot lot, String side) {
    String name = "setback from " + side;
    return own(plan, side)
        .map(r -> name + " (" + Choices.text(r.role()) + ", " + distance(plan, r) + ")")
        .orElseGet(
            () ->
                lot.edges().stream()
                    .filter(e -> e.name().equals(side))
                    .map(e -> name + " (" + Show.length(plan, e.setback()) + ")")
                    .findFirst()
                    .orElse(name));
  }

  static String name(Plan plan, SetbackRule rule) {
    return "setback from "
        + rule.side()
        + " ("
        + Choices.text(rule.role())
        + ", "
        + distance(plan, rule)
        + ", "
        + heights(plan, rule.band().orElseThrow())
        + ")";
  }

  /** The distance with its datum and what it is measured to, where these are not the usual ones. */
  static String distance(Plan plan, SetbackRule rule) {
    return Show.length(plan, rule.distance())
        + (rule.datum() == Datum.LOT_LINE ? "" : " from the " + Choices.text(rule.datum()))
        + (rule.to() == SetbackRule.MeasuredTo.EAVES ? " to the eaves" : "");
  }

  static String heights(Plan plan, Restriction.Band band) {
    if (band.to().compareTo(NO_LIMIT) > 0) {
      return "above " + Show.length(plan, band.from());
    }
    return band.from().metres() == 0
        ? "below " + Show.length(plan, band.to())
        : "from " + Show.length(plan, band.from()) + " to " + Show.length(plan, band.to());
  }
}
