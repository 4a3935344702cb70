package yardloom.sun.yard;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.Cells;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.SunEngine;

/** Works out the sun of every cell. Cells inside buildings and structures are left out. */
public final class FieldMaker {
  private static final double LEFT_OUT = Double.NEGATIVE_INFINITY;

  private final YardSun yard;
  private final CellGrid grid;
  private final Cells cells;
  private final boolean[] built;

  public FieldMaker(Plan plan, YardSun yard, CellGrid grid) {
    this.yard = yard;
    this.grid = grid;
    cells = cells(plan, grid);
    built = new boolean[grid.cells()];
    plan.all(Element.Building.class).forEach(b -> inside(grid, b.shape(), i -> built[i] = true));
    plan.all(Element.Structure.class).forEach(s -> inside(grid, s.shape(), i -> built[i] = true));
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

  public SunField make() {
    double[][] months = new double[12][grid.cells()];
    double[] season = new double[grid.cells()];
    double[] morning = new double[grid.cells()];
    int[] ownShade = cells.ownShade(yard.scene);
    SunEngine.visit(
        grid,
        yard::looker,
        (looker, column, row, i) -> {
          if (built[i]) {
            for (double[] month : months) {
              month[i] = LEFT_OUT;
            }
            season[i] = LEFT_OUT;
            morning[i] = LEFT_OUT;
            return;
          }
          looker.at(grid.xM(column), grid.yM(row), cells.aboveM()[i], ownShade[i]);
          for (int m = 0; m < 12; m++) {
            months[m][i] = looker.directHours(m);
          }
          SunEngine.Sums sums = looker.sums();
          season[i] = seasonMean(sums.hours(), yard);
          morning[i] = seasonMean(sums.morningHours(), yard);
        });
    List<Field> monthFields = new ArrayList<>();
    for (double[] month : months) {
      monthFields.add(field(month));
    }
    return new SunField(monthFields, field(season), field(morning), seasonText());
  }

  private Field field(double[] values) {
    return field(grid, i -> values[i]);
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

  private String seasonText() {
    return text(yard.settings.season().from()) + " to " + text(yard.settings.season().to());
  }

  private static String text(MonthDay day) {
    return day.getDayOfMonth() + " " + Months.fullName(day.getMonth());
  }
}
