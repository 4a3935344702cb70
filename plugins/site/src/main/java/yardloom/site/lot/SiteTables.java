package yardloom.site.lot;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Partition;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.survey.Bearings;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.site.element.Covering;
import yardloom.site.element.Sources;
import yardloom.site.setback.LotGround;
import yardloom.site.survey.SurveyNotes;

/** The tables of the site. */
public final class SiteTables {
  /** So many corners are printed with their area, so that it can be worked out again. */
  private static final int MOST_CORNERS = 24;

  /** A tape reads to a quarter of an inch, at both ends of a side. */
  private static final Length BOTH_ENDS = Length.inches(0.5);

  private SiteTables() {}

  public static Table lotSides(Plan plan) {
    Table.Builder table =
        Table.titled("lot-sides", "Sides of the lot")
            .column(Column.text("side", "side"))
            .column(Column.of("length", "length", Measure.LENGTH))
            .column(Column.text("bearing", "plan bearing"))
            .column(Column.text("role", "role"))
            .column(Column.of("setback", "setback", Measure.LENGTH))
            .column(Column.text("rule", "asked by"));
    plan.lot()
        .ifPresent(
            lot -> {
              for (Lot.Edge edge : lot.edges()) {
                table.row(
                    Cell.text(edge.name()),
                    Cell.of(edge.arc().map(a -> a.length()).orElse(edge.line().length())),
                    Cell.text(bearing(plan, edge.line().start(), edge.line().end())),
                    Cell.text(Choices.text(edge.role())),
                    Cell.of(Derived.given(edge.setback(), "setback", lot.place())),
                    Cell.text(edge.rule()));
              }
            });
    return table
        .note(
            "Bearings run counter-clockwise around the lot; north is the plan's up direction."
                + " They are given as fine as tapes or the deed tell them.")
        .note("Setbacks are as stated in the plan; verify them with the local code.")
        .build();
  }

  private static String bearing(Plan plan, Point a, Point b) {
    double east = b.x().minus(a.x()).metres();
    double north = b.y().minus(a.y()).metres();
    Angle azimuth = Angle.degrees(Math.toDegrees(StrictMath.atan2(east, north)));
    // A deed's own bearings are to be found again, to the minute.
    boolean deed = !plan.attributes().all(SurveyNotes.DEEDS).isEmpty();
    return Bearings.quadrant(azimuth, a.distance(b), deed ? Length.ZERO : BOTH_ENDS);
  }

  public static Table areas(Plan plan) {
    return plan.lot()
        .map(
            lot ->
                parts(
                    "areas",
                    "What covers the lot",
                    lot,
                    Covering.byElement(plan, lot),
                    "Overlaps are counted once, for what is built before what grows; ground outside"
                        + " the lot is not counted."))
        .orElse(Table.titled("areas", "What covers the lot").build());
  }

  public static Table buildableLimits(Plan plan) {
    Optional<Lot> lot = plan.lot();
    List<Partition.Part> parts = lot.map(l -> LotGround.byReason(plan, l)).orElse(List.of());
    if (parts.size() < 2) {
      return Table.titled("buildable-limits", "Limits on the buildable area").build();
    }
    return parts(
        "buildable-limits",
        "Limits on the buildable area",
        lot.get(),
        parts,
        "Ground that several rules take is counted for the first of them. Rules are as stated in"
            + " the plan; verify them with the local code.");
  }

  private static Table parts(
      String id, String title, Lot lot, List<Partition.Part> parts, String note) {
    Table.Builder table =
        Table.titled(id, title)
            .column(Column.text("ground", "ground"))
            .column(Column.of("area", "area", Measure.AREA))
            .column(Column.of("share", "share of lot", Measure.PERCENT));
    Area whole = lot.shape().area();
    for (Partition.Part part : parts) {
      Derived<Area> area = area(part.ground(), part.name());
      table.row(Cell.text(part.name()), Cell.of(area), Cell.number(area.value().ratioTo(whole)));
    }
    return table
        .total(Cell.text("lot"), Cell.of(area(lot.shape(), "lot")), Cell.number(1))
        .note(note)
        .build();
  }

  public static Table beds(Plan plan) {
    Table.Builder table =
        Table.titled("beds", "Beds")
            .column(Column.text("bed", "bed"))
            .column(Column.text("use", "use"))
            .column(Column.of("area", "area", Measure.AREA))
            .column(Column.of("edge", "edge length", Measure.LENGTH));
    List<Element.Bed> beds = plan.all(Element.Bed.class);
    Area sum = Area.ZERO;
    Derived.Builder why = Derived.by("sum over beds", Sources.COORDINATE_AREA);
    for (Element.Bed bed : beds) {
      Derived<Area> area = area(bed.shape(), Covering.label(bed.id()));
      sum = sum.plus(area.value());
      why.from(bed.id().name(), area);
      table.row(
          Cell.text(bed.id().name()),
          Cell.text(Choices.text(bed.use())),
          Cell.of(area),
          Cell.of(bed.shape().perimeter()));
    }
    if (beds.size() > 1) {
      table.total(Cell.text("all beds"), Cell.BLANK, Cell.of(why.gives(sum)), Cell.BLANK);
    }
    return table.build();
  }

  private static Derived<Area> area(Shape shape, String what) {
    boolean listed = isListed(shape);
    Derived.Builder why =
        Derived.by(
            listed ? "area = ½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|" : "area within all outlines",
            Sources.COORDINATE_AREA);
    return (listed
            ? why.from("corners of " + what, shape.corners())
            : why.from("outlines of " + what, shape.perimeter()))
        .gives(shape.area());
  }

  /** Whether the corners are few enough to be worked with by hand. */
  private static boolean isListed(Shape shape) {
    return shape.polygons().size() == 1
        && shape.polygons().get(0).getNumInteriorRing() == 0
        && shape.corners().size() <= MOST_CORNERS;
  }
}
