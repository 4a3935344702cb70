package yardloom.sun.hours;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import yardloom.sun.position.SunYear;
import yardloom.sun.shade.ColumnProfile;
import yardloom.sun.shade.ConvexBody;
import yardloom.sun.shade.CrownBody;
import yardloom.sun.shade.HourColumns;
import yardloom.sun.shade.ShadeScene;

/**
 * Direct sun at any number of places of one scene, for all days of the year at once.
 *
 * <p>Each place gets one profile: for columns of hour angle, the declinations that obstacles hide,
 * from exact outlines ({@link ConvexBody}, {@link CrownBody}). Days are then look-ups ({@link
 * YearTally}, {@link DayTally}).
 *
 * <p>Direct sun is the sun's centre above the level horizon and above the ground's plane, without
 * refraction, behind nothing. Error bound: each change between sun and shade on a single day is
 * placed to half a step of hour angle (12 h / {@code columnsPerDay}); outlines are exact. Over many
 * days the errors cancel. Work grows with cells × (obstacles + columns).
 *
 * <p>Rows of a grid are worked on in parallel; each cell depends on nothing but itself, so the
 * number of processors does not show in the result.
 *
 * <p>References: own construction; accuracy and speed against rays and a general GIS are measured
 * in DEVELOPERS.md.
 */
public final class SunEngine {
  private final ShadeScene scene;
  private final SunYear year;
  private final HourColumns columns;
  private final HourColumns sky;

  /** Columns over the whole sky, for the sky view. */
  private static final int SKY_COLUMNS = 240;

  public SunEngine(ShadeScene scene, SunYear year, int columnsPerDay) {
    this.scene = scene;
    this.year = year;
    columns = new HourColumns(scene.frame(), scene.ground(), columnsPerDay, year.limit() + 1e-9);
    sky = new HourColumns(scene.frame(), scene.ground(), SKY_COLUMNS, Double.POSITIVE_INFINITY);
  }

  ShadeScene scene() {
    return scene;
  }

  /** Hours of a place summed by group of days. */
  public record Sums(double[] hours, double[] morningHours) {}

  /** Looks at many places one after the other; for one thread. */
  public final class Looker {
    private final ColumnProfile profile = new ColumnProfile(columns);
    private final ColumnProfile skyProfile = new ColumnProfile(sky);
    private final SkyTally skyTally = new SkyTally(scene, sky);
    private final YearTally tally;
    private final DayTally days;
    private double eyeX;
    private double eyeY;
    private double eyeM;
    private int leftOut;

    private Looker(DayGroups groups, int[] daysOfYear) {
      tally = new YearTally(scene, year, columns, groups.array(), DayGroups.GROUPS);
      days =
          new DayTally(
              scene,
              columns,
              IntStream.of(daysOfYear).mapToDouble(year::tan).toArray(),
              IntStream.of(daysOfYear).map(SunYear::month).toArray());
    }

    /**
     * Turns to a place.
     *
     * @param aboveM height above the ground there
     * @param without whose own shade is left out, see {@link ShadeScene#shadeOf}
     */
    public void at(double x, double y, double aboveM, int without) {
      turn(x, y, aboveM, without);
      scene.mark(eyeX, eyeY, eyeM, leftOut, profile);
    }

    /** Stands at a place without looking yet. */
    public void turn(double x, double y, double aboveM) {
      turn(x, y, aboveM, ShadeScene.NOBODY);
    }

    void turn(double x, double y, double aboveM, int without) {
      eyeX = x;
      eyeY = y;
      eyeM = scene.ground().heightM(x, y) + aboveM;
      leftOut = without;
    }

    /** The share of the sky that a level surface here sees, for each month. */
    public double[] skyView() {
      double[] months = new double[12];
      scene.mark(eyeX, eyeY, eyeM, leftOut, skyProfile);
      skyTally.of(skyProfile, months);
      return months;
    }

    /**
     * The direct radiation that arrives here on the {@code d}-th day, summed over the day.
     *
     * @param beamByColumn what an open place would get in each column's time
     */
    public double beam(int d, double[] beamByColumn) {
      double[] light = days.light(profile, d);
      double sum = 0;
      for (int j = columns.first; j <= columns.last; j++) {
        sum += Math.max(0, light[j]) * beamByColumn[j];
      }
      return sum;
    }

    /**
     * Whether an element, numbered by {@link ShadeScene#shadeOf}, ever shades this place. What was
     * looked at before is forgotten.
     */
    public boolean feels(int element) {
      return element != ShadeScene.NOBODY && scene.touches(element, eyeX, eyeY, eyeM, profile);
    }

    /** Hours by group of days at this place. */
    public Sums sums() {
      Sums sums = new Sums(new double[DayGroups.GROUPS], new double[DayGroups.GROUPS]);
      tally.add(profile, sums.hours(), sums.morningHours());
      return sums;
    }

    /** The direct hours of the {@code d}-th of the chosen days at this place. */
    public double directHours(int d) {
      return days.directHours(profile, d);
    }

    /** The course of the {@code d}-th of the chosen days at this place. */
    public DayLight day(int d) {
      return days.of(profile, d);
    }
  }

  /** A looker for these groups and single days of the year (0 to 364). */
  public Looker looker(DayGroups groups, int... daysOfYear) {
    return new Looker(groups, daysOfYear);
  }

  /**
   * Receives one cell.
   *
   * @param <L> what one thread works with
   */
  @FunctionalInterface
  public interface CellTask<L> {
    /** Called once for each cell, from several threads; {@code index} is row × columns + column. */
    void cell(L looker, int column, int row, int index);
  }

  /**
   * Visits all cells of a grid, rows in parallel. Lookers are made as threads need them and handed
   * on from row to row; they carry nothing over from cell to cell.
   */
  public static <L> void visit(CellGrid grid, Supplier<L> lookers, CellTask<L> task) {
    Queue<L> idle = new ConcurrentLinkedQueue<>();
    IntStream.range(0, grid.rows())
        .parallel()
        .forEach(
            row -> {
              L waiting = idle.poll();
              L looker = waiting == null ? lookers.get() : waiting;
              for (int column = 0; column < grid.columns(); column++) {
                task.cell(looker, column, row, row * grid.columns() + column);
              }
              idle.add(looker);
            });
  }
}
