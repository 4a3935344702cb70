package yardloom.sun.yard;

import java.time.MonthDay;
import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/** What the sun plugin hangs on the plan, on beds and on trees. */
public final class SunKeys {
  public static final AttributeKey<Length> CELL = new AttributeKey<>("sun.cell", Length.class);
  public static final AttributeKey<Skyline> SKYLINE =
      new AttributeKey<>("sun.skyline", Skyline.class);
  public static final AttributeKey<String> SCHEME = new AttributeKey<>("sun.scheme", String.class);
  public static final AttributeKey<Dates> SEASON = new AttributeKey<>("sun.season", Dates.class);
  public static final AttributeKey<Fall> FALL = new AttributeKey<>("sun.fall", Fall.class);
  public static final AttributeKey<String> STAGE = new AttributeKey<>("sun.stage", String.class);
  public static final AttributeKey<BestSpot> BEST_SPOT =
      new AttributeKey<>("sun.best-spot", BestSpot.class);
  public static final AttributeKey<Point> SUN_POINT = new AttributeKey<>("sun.point", Point.class);

  /** Elements that are not there yet and may take a neighbour's sun. */
  public static final AttributeKey<ElementId> PROPOSED =
      new AttributeKey<>("sun.proposed", ElementId.class);

  public static final AttributeKey<Length> BED_HEIGHT =
      new AttributeKey<>("sun.bed-height", Length.class);
  public static final AttributeKey<Dates> LEAVES = new AttributeKey<>("sun.leaves", Dates.class);
  public static final AttributeKey<Crown> CROWN = new AttributeKey<>("sun.crown", Crown.class);

  /** Global radiation by month, as the plan gives it. */
  public static final AttributeKey<SolarRadiation.Given> RADIATION =
      new AttributeKey<>("sun.radiation", SolarRadiation.Given.class);

  private SunKeys() {}

  /** All elements that the plan calls new, in order. */
  public static SortedSet<ElementId> proposed(Plan plan) {
    SortedSet<ElementId> proposed = new TreeSet<>();
    plan.attributes().all(PROPOSED).forEach(e -> proposed.add(e.value()));
    return proposed;
  }

  /** One point of the distant horizon. */
  public record Skyline(Angle bearing, Angle rise) {}

  /** From one day of the year to another, both included. */
  public record Dates(MonthDay from, MonthDay to) {}

  /** Falling ground: metres down per metre, and towards which bearing. */
  public record Fall(double slope, Angle towards) {}

  /** A search for sunny ground of some size. */
  public record BestSpot(Area area, String crop, double hours) {}

  /**
   * How a tree's crown lets light through.
   *
   * @param inLeaf share that passes in leaf
   * @param bare share that passes without leaves
   */
  public record Crown(double inLeaf, double bare, boolean cylinder) {
    /** What holds when the plan says nothing: recalled ranges of shade trees, unverified. */
    public static final Crown USUAL = new Crown(0.2, 0.65, false);
  }
}
