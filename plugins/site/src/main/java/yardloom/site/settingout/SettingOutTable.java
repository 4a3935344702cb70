package yardloom.site.settingout;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.survey.TapePair;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.ground.GradingSheet;

/**
 * The two tapes to every corner and bend, as a crew reads them: to the nearest quarter inch or 5
 * mm.
 */
public final class SettingOutTable {
  /** Its id, on paper and in files. */
  public static final String ID = "setting-out";

  private static final Source TAPES =
      Source.commonPractice("common practice: two tapes from fixed points");

  private static final double QUARTERS_PER_FOOT = 48;
  private static final double PER_METRE = 200;

  private static final String BETWEEN = " (building between)";

  /** Set where a third measure is wanted. */
  private static final String MARK = " *";

  /** A length this little short of a whole unit is that unit. */
  private static final double WHOLE = 1e-6;

  private final Plan plan;
  private final SettingOut work;
  private final TapePair tapes;
  private final Table.Builder table;

  private SettingOutTable(Plan plan, SettingOut work, TapePair tapes, Table.Builder table) {
    this.plan = plan;
    this.work = work;
    this.tapes = tapes;
    this.table = table;
  }

  /** Empty if there is nothing to set out, or neither a building nor a lot to set out from. */
  public static Table of(Plan plan) {
    Table.Builder table =
        Table.titled(ID, "Setting out")
            .column(Column.text("what", "what"))
            .column(Column.text("point", "point"))
            .column(Column.text("from-a", "from A"))
            .column(Column.text("from-b", "from B"))
            .column(Column.text("side", "side of A-B"))
            .column(Column.text("check", "check between"));
    SettingOut work = SettingOut.of(plan);
    work.tapes().ifPresent(tapes -> new SettingOutTable(plan, work, tapes, table).fill());
    return table.build();
  }

  /**
   * The same readings in a list narrow enough for two columns of a page to carry: a heading for
   * each figure, then a row for each of its points under its number on the plan of points.
   */
  public static Table toCarry(Plan plan) {
    SettingOut work = SettingOut.of(plan);
    // What the crew tapes first stands over all that it tapes from there.
    String first =
        work.tapes().map(t -> ": first A to B, " + text(plan, t.a().distance(t.b()))).orElse("");
    Table.Builder table =
        Table.titled(ID, "Tapes" + first)
            .column(Column.text("point", "No."))
            .column(Column.text("from-a", "From A"))
            .column(Column.text("from-b", "From B"))
            .column(Column.text("side", "Side"))
            .column(Column.text("check", "Check"))
            .column(Column.text("done", "OK"));
    work.tapes().ifPresent(tapes -> new SettingOutTable(plan, work, tapes, table).fillToCarry());
    return table.build();
  }

  private void fill() {
    for (SettingOut.Figure figure : work.figures()) {
      for (int i = 0; i < figure.points().size(); i++) {
        row(figure, i);
      }
    }
    notes();
  }

  private void notes() {
    table
        .note(
            "Hold one tape at A and one at B (marked on the plan, "
                + text(tapes.a().distance(tapes.b()))
                + " apart: measure that first) and bring both readings together. Left and right are"
                + " as seen from A towards B. Tapes level and tight, on a slope with a plumb line"
                + " under the upper end; readings are to the nearest "
                + (plan.info().units() == UnitSystem.US ? "1/4 in." : "5 mm."))
        .note(
            "Corner 1 is the lower left one on the plan, the others follow counter-clockwise; a"
                + " path is set out by its middle, half its width to either side. Check before you"
                + " dig: both diagonals (1-3, 2-4) of a bed with four corners, and the sides.")
        .note(
            "A and B are the two corners from which most points can be seen with tapes that cross"
                + " at 30 to 150 degrees. Where a reading is marked, the tapes cross flatter or a"
                + " building stands between: take a third measure.");
  }

  private void row(SettingOut.Figure figure, int i) {
    Point at = figure.points().get(i);
    String point =
        figure.points().size() == 1 ? figure.form().word() : figure.form().word() + " " + (i + 1);
    table.row(
        Cell.text(figure.name()),
        Cell.text(point),
        Cell.of(tape("A", tapes.a(), at, BETWEEN)),
        Cell.of(tape("B", tapes.b(), at, BETWEEN)),
        Cell.text(side(at, " (flat crossing)")),
        Cell.text(check(figure, i, 1)));
  }

  private void fillToCarry() {
    int first = 1;
    boolean stems = false;
    for (SettingOut.Figure figure : work.figures()) {
      if (!stems || figure.form() != SettingOut.Form.STEM) {
        table.heading(heading(figure));
      }
      stems = figure.form() == SettingOut.Form.STEM;
      for (int i = 0; i < figure.points().size(); i++) {
        Point at = figure.points().get(i);
        table.row(
            Cell.text(String.valueOf(first + i)),
            Cell.of(tape("A", tapes.a(), at, MARK)),
            Cell.of(tape("B", tapes.b(), at, MARK)),
            Cell.text(side(at, MARK)),
            Cell.text(check(figure, i, first)),
            Cell.text("[  ]"));
      }
      first += figure.points().size();
    }
    table.note(
        (GradingSheet.isWorthDrawing(plan)
                ? "Tapes level, plumb down from the upper end; sides seen from A."
                : "Tapes tight, sides seen from A.")
            + " (*): take a third measure.");
    if (work.isCrowded()) {
      table.note(
          "The map numbers the first point of each: the others follow counter-clockwise, those of a"
              + " path along it.");
    }
  }

  /** Stems have one: the plan of points names each. */
  private static String heading(SettingOut.Figure figure) {
    return switch (figure.form()) {
      case CORNERS -> figure.name();
      case STEM -> "Stems of new trees";
      default -> figure.name() + ": " + figure.form().word();
    };
  }

  private Derived<String> tape(String name, Point from, Point at, String ifBetween) {
    Length exact = from.distance(at);
    boolean us = plan.info().units() == UnitSystem.US;
    String nearest =
        us ? " + 0.125 in, down to the next 0.25 in" : " + 2.5 mm, down to the next 5 mm";
    return Derived.by("√((x − x" + name + ")² + (y − y" + name + ")²)" + nearest, TAPES)
        .from("x", at.x())
        .from("y", at.y())
        .from("x" + name, from.x())
        .from("y" + name, from.y())
        .gives(text(exact) + (work.isFree(from, at) ? "" : ifBetween));
  }

  private String side(Point at, String ifFlat) {
    String side =
        switch (tapes.side(at)) {
          case LEFT -> "left";
          case RIGHT -> "right";
          case ON -> "on it";
        };
    return tapes.crossesWell(at) ? side : side + ifFlat;
  }

  /**
   * The diagonal of a four-sided bed, otherwise the way to the next point.
   *
   * @param first the number of the figure's first point
   */
  private String check(SettingOut.Figure figure, int i, int first) {
    List<Point> points = figure.points();
    int n = points.size();
    if (figure.form() == SettingOut.Form.CIRCLE) {
      return "radius " + text(figure.radius());
    }
    if (figure.form() == SettingOut.Form.STEM) {
      return "";
    }
    boolean isOpen = figure.form() == SettingOut.Form.WAY;
    if (isOpen && i == n - 1) {
      return "";
    }
    boolean isDiagonal = n == 4 && !isOpen && i < 2;
    int other = (i + (isDiagonal ? 2 : 1)) % n;
    return (first + i)
        + "-"
        + (first + other)
        + ": "
        + text(points.get(i).distance(points.get(other)));
  }

  private String text(Length exact) {
    return text(plan, exact);
  }

  private static String text(Plan plan, Length exact) {
    if (plan.info().units() == UnitSystem.US) {
      return DimensionText.of(Length.feet(nearest(exact.feet(), QUARTERS_PER_FOOT)), UnitSystem.US);
    }
    return BigDecimal.valueOf(nearest(exact.metres(), PER_METRE))
            .setScale(3, RoundingMode.HALF_UP)
            .toPlainString()
        + " m";
  }

  private static double nearest(double exact, double stepsInOne) {
    return Math.floor(exact * stepsInOne + 0.5 + WHOLE) / stepsInOne;
  }
}
