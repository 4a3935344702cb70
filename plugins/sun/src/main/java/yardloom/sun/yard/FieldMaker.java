package yardloom.sun.yard;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.Cells;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.SunEngine;

/** Works out the sun of every cell. Cells inside buildings and structures are left out. */
public final class FieldMaker {
  private static final double LEFT_OUT = Double.NEGATIVE_INFINITY;

  private final Sought sought;

  /** All that the sun of the cells depends on. */
  private record Sought(
      YardSun yard, CellGrid grid, double[] aboveM, int[] ownShade, boolean[] built) {}

  public FieldMaker(Plan plan, YardSun yard, CellGrid grid) {
    Cells cells = cells(plan, grid);
    boolean[] built = new boolean[grid.cells()];
    plan.all(Element.Building.class).forEach(b -> inside(grid, b.shape(), i -> built[i] = true));
    plan.all(Element.Structure.class).forEach(s -> inside(grid, s.shape(), i -> built[i] = true));
    sought = new Sought(yard, grid, cells.aboveM(), cells.ownShade(yard.scene), built);
  }

  /**
   * The height of the soil in beds, and the beds themselves, whose own plants do not shade them.
   */
  public static Cells cells(Plan plan, CellGrid grid) {
    Cells cells = Cells.bare(grid.cells());
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      double aboveM = YardSun.soilM(bed);
      inside(
          grid,
          bed.shape(),
          i -> {
            cells.aboveM()[i] = aboveM;
            cells.owner()[i] = bed.id();
          });
    }
    return cells;
  }

  private static void inside(CellGrid grid, Shape shape, IntConsumer each) {
    Predicate<Point> test = shape.insideTest();
    IntStream.range(0, grid.cells())
        .filter(
            i -> test.test(Point.metres(grid.xM(i % grid.columns()), grid.yM(i / grid.columns()))))
        .forEach(each);
  }

  /** The sun of every cell; of cells whose shade is that of the run before it is kept. */
  public SunField make() {
    return Piece.after("field", sought, FieldMaker::made);
  }

  private static SunField made(Optional<Piece.Made<Sought, SunField>> before, Sought sought) {
    YardSun yard = sought.yard();
    CellGrid grid = sought.grid();
    double[][] months = new double[12][grid.cells()];
    double[] season = new double[grid.cells()];
    double[] morning = new double[grid.cells()];
    Optional<KeptCells> kept =
        before.flatMap(b -> KeptCells.of(b.input().yard(), yard, b.input().grid(), grid));
    SunEngine.visit(
        grid,
        () -> new Lookers(yard.looker(), kept.map(KeptCells::feeler)),
        (lookers, column, row, i) -> {
          if (kept.isPresent() && isAsBefore(before.get().input(), sought, lookers, column, row)) {
            SunField was = before.get().piece();
            for (int m = 0; m < 12; m++) {
              months[m][i] = was.months().get(m).at(column, row).orElse(LEFT_OUT);
            }
            season[i] = was.season().at(column, row).orElse(LEFT_OUT);
            morning[i] = was.morning().at(column, row).orElse(LEFT_OUT);
            return;
          }
          SunEngine.Looker looker = lookers.looker();
          if (sought.built()[i]) {
            for (double[] month : months) {
              month[i] = LEFT_OUT;
            }
            season[i] = LEFT_OUT;
            morning[i] = LEFT_OUT;
            return;
          }
          looker.at(grid.xM(column), grid.yM(row), sought.aboveM()[i], sought.ownShade()[i]);
          for (int m = 0; m < 12; m++) {
            months[m][i] = looker.directHours(m);
          }
          SunEngine.Sums sums = looker.sums();
          season[i] = seasonMean(sums.hours(), yard);
          morning[i] = seasonMean(sums.morningHours(), yard);
        });
    List<Field> monthFields = new ArrayList<>();
    for (double[] month : months) {
      monthFields.add(field(grid, i -> month[i]));
    }
    return new SunField(
        monthFields,
        field(grid, i -> season[i]),
        field(grid, i -> morning[i]),
        text(yard.settings.season().from()) + " to " + text(yard.settings.season().to()));
  }

  /** What one thread works with. */
  private record Lookers(SunEngine.Looker looker, Optional<KeptCells.Feeler> feeler) {}

  private static boolean isAsBefore(Sought was, Sought is, Lookers lookers, int column, int row) {
    int i = row * is.grid().columns() + column;
    return was.built()[i] == is.built()[i]
        && was.aboveM()[i] == is.aboveM()[i]
        && was.yard()
            .scene
            .elementOf(was.ownShade()[i])
            .equals(is.yard().scene.elementOf(is.ownShade()[i]))
        && (is.built()[i]
            || !lookers
                .feeler()
                .orElseThrow()
                .feels(is.grid().xM(column), is.grid().yM(row), is.aboveM()[i]));
  }

  public static Field field(CellGrid grid, IntToDoubleFunction values) {
    return Field.of(
        Point.metres(grid.cornerXM(), grid.cornerYM()),
        Length.metres(grid.cellM()),
        grid.columns(),
        grid.rows(),
        values);
  }

  /** Mean hours a day over the season. */
  public static double seasonMean(double[] sums, YardSun yard) {
    double total = 0;
    for (int g = 12; g < DayGroups.GROUPS; g++) {
      total += sums[g];
    }
    return total / yard.groups.seasonDays();
  }

  private static String text(MonthDay day) {
    return day.getDayOfMonth() + " " + Months.fullName(day.getMonth());
  }
}
