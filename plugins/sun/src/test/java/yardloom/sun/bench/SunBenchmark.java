package yardloom.sun.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.facts.Obstacle;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.Cells;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.hours.SunMap;
import yardloom.sun.position.SunYear;

/**
 * Measures the engine beside a brute-force ray test of the same scene; see DEVELOPERS.md. Run
 * {@code plugins/sun/benchmark.sh}, which prints the whole table.
 */
public final class SunBenchmark {
  private static final DayGroups GROUPS = DayGroups.season(MonthDay.of(4, 1), MonthDay.of(9, 30));

  private SunBenchmark() {}

  /** Hours of the whole year for each cell. */
  static double[] engineYear(BenchScene scene, CellGrid grid, int columnsPerDay) {
    SunEngine engine =
        new SunEngine(scene.scene(), new SunYear(BenchScene.LONGITUDE), columnsPerDay);
    double[] hours = new double[grid.cells()];
    SunEngine.visit(
        grid,
        () -> engine.looker(GROUPS),
        (looker, column, row, i) -> {
          looker.at(grid.xM(column), grid.yM(row), 0, -1);
          double sum = 0;
          for (double h : looker.sums().hours()) {
            sum += h;
          }
          hours[i] = sum;
        });
    return hours;
  }

  /** Worst and mean relative difference over every {@code stride}-th cell. */
  static double[] difference(double[] fast, double[] brute, int stride) {
    double worst = 0;
    double mean = 0;
    int n = 0;
    for (int k = 0; k < brute.length; k++) {
      if (brute[k] > 1) {
        double off = Math.abs(fast[k * stride] - brute[k]) / brute[k];
        worst = Math.max(worst, off);
        mean += off;
        n++;
      }
    }
    return new double[] {worst, mean / n};
  }

  private static void row(String what, Cost cost, double[] off) {
    String errors =
        off.length == 0
            ? " | |"
            : String.format(Locale.ROOT, " %.2f %% | %.3f %% |", 100 * off[0], 100 * off[1]);
    System.out.println(
        String.format(
            Locale.ROOT, "| %s | %.2f | %.2f |%s", what, cost.wallS(), cost.cpuS(), errors));
  }

  /** Wall and processor seconds of a piece of work; other programs disturb the second less. */
  private record Cost(double wallS, double cpuS) {
    static Cost of(Runnable work) {
      long wall = System.nanoTime();
      long cpu = cpuNanos();
      work.run();
      return new Cost((System.nanoTime() - wall) / 1e9, (cpuNanos() - cpu) / 1e9);
    }

    private static long cpuNanos() {
      return ((com.sun.management.OperatingSystemMXBean)
              ManagementFactory.getOperatingSystemMXBean())
          .getProcessCpuTime();
    }

    Cost times(double factor) {
      return new Cost(wallS * factor, cpuS * factor);
    }
  }

  /** {@code cold}, {@code table [stride]} or {@code dsm}. */
  public static void main(String[] args) {
    switch (args[0]) {
      case "cold" -> cold();
      case "dsm" -> System.out.print(new BenchScene(14).raster());
      default -> table(args.length > 1 ? Integer.parseInt(args[1]) : 97);
    }
  }

  /** The first whole year of a fresh JVM, and the most heap that it took. */
  private static void cold() {
    BenchScene scene = new BenchScene(14);
    CellGrid grid = BenchScene.grid(0.1);
    Cost cost = Cost.of(() -> engineYear(scene, grid, 288));
    long peak =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getType() == MemoryType.HEAP)
            .mapToLong(p -> p.getPeakUsage().getUsed())
            .sum();
    row(
        String.format(
            Locale.ROOT, "whole year, cold JVM, 5-minute columns (heap at most %d MB)", peak >> 20),
        cost,
        new double[0]);
  }

  private static void table(int stride) {
    BenchScene scene = new BenchScene(14);
    CellGrid grid = BenchScene.grid(0.1);
    BruteForce brute =
        new BruteForce(
            BenchScene.LATITUDE, BenchScene.LONGITUDE, SunYear.REFERENCE_YEAR, 5, scene.blockers);
    double[][] slow = new double[1][];
    Cost some = Cost.of(() -> slow[0] = brute.yearHours(grid, stride));
    Cost all = some.times((double) grid.cells() / slow[0].length);
    row(
        String.format(
            Locale.ROOT,
            "ray test, %d rays a cell, %d cells, scaled up to %d",
            brute.rays(),
            slow[0].length,
            grid.cells()),
        all,
        new double[0]);
    engineYear(scene, grid, 288);
    for (int columns : new int[] {96, 144, 288, 360, 720, 1440}) {
      double[][] hours = new double[1][];
      Cost cost = Cost.of(() -> hours[0] = engineYear(scene, grid, columns));
      String times =
          columns == 288
              ? String.format(
                  Locale.ROOT, ", %.0f times faster than the ray test", all.cpuS() / cost.cpuS())
              : "";
      row(
          String.format(
              Locale.ROOT, "whole year, warm, %.0f-minute columns%s", 1440.0 / columns, times),
          cost,
          difference(hours[0], slow[0], stride));
    }
    growth(scene);
    movedTree();
    cellSize(scene);
  }

  private static void growth(BenchScene scene) {
    for (int trees : new int[] {0, 14, 34, 74}) {
      BenchScene more = new BenchScene(trees);
      row(
          (6 + trees) + " obstacles, 100,000 cells",
          Cost.of(() -> engineYear(more, BenchScene.grid(0.1), 288)),
          new double[0]);
    }
    for (double cell : new double[] {0.4, 0.2, 0.1, 0.05}) {
      CellGrid g = BenchScene.grid(cell);
      row(
          "20 obstacles, " + g.cells() + " cells",
          Cost.of(() -> engineYear(scene, g, 288)),
          new double[0]);
    }
  }

  /** One small tree moved by 2 m: all cells again, and only those that it can touch. */
  private static void movedTree() {
    List<Obstacle> before = new ArrayList<>(new BenchScene(14).obstacles);
    List<Obstacle> after = new ArrayList<>(before);
    before.add(BenchScene.tree("moved", 30, 12, 0.8, 0.5, 2.5));
    after.add(BenchScene.tree("moved", 32, 12, 0.8, 0.5, 2.5));
    ElementId moved = new ElementId(ElementKind.TREE, "moved");
    SunYear year = new SunYear(BenchScene.LONGITUDE);
    SunEngine then = new SunEngine(BenchScene.scene(after), year, 288);
    CellGrid grid = BenchScene.grid(0.1);
    Cells bare = Cells.bare(grid.cells());
    SunMap map = SunMap.of(new SunEngine(BenchScene.scene(before), year, 288), grid, bare, GROUPS);
    Cost full = Cost.of(() -> SunMap.of(then, grid, bare, GROUPS));
    SunMap[] followed = new SunMap[1];
    Cost part = Cost.of(() -> followed[0] = map.after(then, moved));
    row("one tree moved, all cells again", full, new double[0]);
    row(
        String.format(
            Locale.ROOT, "one tree moved, only the %d cells it touches", followed[0].workedOut()),
        part,
        new double[0]);
  }

  /** The mean of a bed of 1.2 by 6 m half in the shade of the house, against cells of 2.5 cm. */
  private static void cellSize(BenchScene scene) {
    double exact = bedMean(scene, 0.025);
    for (double cell : new double[] {0.1, 0.2, 0.3, 0.6}) {
      double[] mean = new double[1];
      Cost cost = Cost.of(() -> mean[0] = bedMean(scene, cell));
      double off = Math.abs(mean[0] / exact - 1);
      row(
          String.format(Locale.ROOT, "mean of a bed, cells of %.1f m against 0.025 m", cell),
          cost,
          new double[] {off, off});
    }
  }

  private static double bedMean(BenchScene scene, double cellM) {
    CellGrid bed =
        new CellGrid(19, 17.5, cellM, (int) Math.round(1.2 / cellM), (int) Math.round(6 / cellM));
    double sum = 0;
    for (double hours : engineYear(scene, bed, 288)) {
      sum += hours;
    }
    return sum / bed.cells();
  }
}
