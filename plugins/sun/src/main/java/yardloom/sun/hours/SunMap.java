package yardloom.sun.hours;

import java.util.concurrent.atomic.AtomicInteger;
import yardloom.kernel.plan.ElementId;

/**
 * Hours of a whole grid by group of days, which can follow a change of one element.
 *
 * <p>After a change only cells that the element shades, before or after, at any time of the year
 * are worked out again; all others keep their values. The result is the same, to the last bit, as
 * working out everything.
 */
public final class SunMap {
  private final SunEngine engine;
  private final CellGrid grid;
  private final Cells cells;
  private final DayGroups groups;
  private final double[][] hours;
  private final int workedOut;

  private SunMap(
      SunEngine engine,
      CellGrid grid,
      Cells cells,
      DayGroups groups,
      double[][] hours,
      int workedOut) {
    this.engine = engine;
    this.grid = grid;
    this.cells = cells;
    this.groups = groups;
    this.hours = hours;
    this.workedOut = workedOut;
  }

  /** Works out all cells, rows in parallel. */
  public static SunMap of(SunEngine engine, CellGrid grid, Cells cells, DayGroups groups) {
    double[][] hours = new double[grid.cells()][];
    int[] own = cells.ownShade(engine.scene());
    SunEngine.visit(
        grid,
        () -> engine.looker(groups),
        (looker, column, row, i) -> {
          looker.at(grid.xM(column), grid.yM(row), cells.aboveM()[i], own[i]);
          hours[i] = looker.sums().hours();
        });
    return new SunMap(engine, grid, cells, groups, hours, grid.cells());
  }

  /**
   * The map after {@code changed} was moved, grown, added or taken away.
   *
   * @param after an engine of the scene after the change, all other elements the same
   */
  public SunMap after(SunEngine after, ElementId changed) {
    double[][] now = hours.clone();
    AtomicInteger count = new AtomicInteger();
    int was = engine.scene().shadeOf(changed);
    int is = after.scene().shadeOf(changed);
    int[] own = cells.ownShade(after.scene());
    SunEngine.visit(
        grid,
        () -> new BeforeAndAfter(engine.looker(groups), after.looker(groups)),
        (lookers, column, row, i) -> {
          double x = grid.xM(column);
          double y = grid.yM(row);
          double aboveM = cells.aboveM()[i];
          lookers.before().turn(x, y, aboveM, own[i]);
          lookers.after().turn(x, y, aboveM, own[i]);
          if (lookers.before().feels(was) || lookers.after().feels(is)) {
            lookers.after().at(x, y, aboveM, own[i]);
            now[i] = lookers.after().sums().hours();
            count.incrementAndGet();
          }
        });
    return new SunMap(after, grid, cells, groups, now, count.get());
  }

  private record BeforeAndAfter(SunEngine.Looker before, SunEngine.Looker after) {}

  /** How many cells were worked out for this map. */
  public int workedOut() {
    return workedOut;
  }

  /** The hours of a cell in a group of days, together. */
  public double hours(int cell, int group) {
    return hours[cell][group];
  }

  /** Mean hours a day of a cell over the season of the groups. */
  public double seasonMean(int cell) {
    double total = 0;
    for (int g = 12; g < DayGroups.GROUPS; g++) {
      total += hours[cell][g];
    }
    return total / groups.seasonDays();
  }
}
