package yardloom.sun.bench;

import java.lang.management.ManagementFactory;
import java.time.MonthDay;
import java.util.Locale;
import yardloom.sun.calc.DayGroups;
import yardloom.sun.calc.SunEngine;
import yardloom.sun.calc.SunYear;
import yardloom.sun.model.Grid;

/**
 * Measures the engine beside a brute-force ray test of the same scene; see DEVELOPERS.md. Run the
 * main method in a fresh JVM.
 */
public final class SunBenchmark {
  private static final DayGroups GROUPS = DayGroups.season(MonthDay.of(4, 1), MonthDay.of(9, 30));

  private SunBenchmark() {}

  /** Hours of the whole year for each cell. */
  static double[] engineYear(BenchScene scene, Grid grid, int columnsPerDay) {
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

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
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

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.2f s wall, %.2f s processor", wallS, cpuS);
    }
  }

  /** Prints the table; the argument is how many cells the brute force leaves out between two. */
  public static void main(String[] args) {
    int stride = args.length > 0 ? Integer.parseInt(args[0]) : 97;
    BenchScene scene = new BenchScene(14);
    Grid grid = BenchScene.grid(0.1);
    double[][] fast = new double[1][];
    Cost cold = Cost.of(() -> fast[0] = engineYear(scene, grid, 288));
    say("cold, 5-minute columns, %d cells: %s", grid.cells(), cold);
    say("warm: %s", Cost.of(() -> engineYear(scene, grid, 288)));
    Runtime runtime = Runtime.getRuntime();
    say("heap in use: %d MB", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
    BruteForce brute =
        new BruteForce(
            BenchScene.LATITUDE, BenchScene.LONGITUDE, SunYear.REFERENCE_YEAR, 5, scene.blockers);
    double[][] slow = new double[1][];
    Cost slowCost = Cost.of(() -> slow[0] = brute.yearHours(grid, stride));
    double all = (double) grid.cells() / slow[0].length;
    say("brute force: %d rays a cell, %d cells: %s", brute.rays(), slow[0].length, slowCost);
    say("brute force, all cells: %.0f s processor", slowCost.cpuS() * all);
    say("times faster, cold, by processor time: %.0f", slowCost.cpuS() * all / cold.cpuS());
    double[] off = difference(fast[0], slow[0], stride);
    say("worst cell off by %.3f %%, mean %.4f %%", off[0] * 100, off[1] * 100);
    for (int columns : new int[] {96, 144, 288, 360, 720, 1440}) {
      double[][] hours = new double[1][];
      Cost cost = Cost.of(() -> hours[0] = engineYear(scene, grid, columns));
      double[] d = difference(hours[0], slow[0], stride);
      say(
          "step %.1f min: %s, worst %.3f %%, mean %.4f %%",
          1440.0 / columns, cost, d[0] * 100, d[1] * 100);
    }
    growth(scene);
    cellSize(scene);
  }

  private static void growth(BenchScene scene) {
    for (int trees : new int[] {0, 14, 34, 74}) {
      BenchScene more = new BenchScene(trees);
      say(
          "obstacles %d: %s",
          6 + trees, Cost.of(() -> engineYear(more, BenchScene.grid(0.1), 288)));
    }
    for (double cell : new double[] {0.4, 0.2, 0.1}) {
      Grid g = BenchScene.grid(cell);
      say("cells %d: %s", g.cells(), Cost.of(() -> engineYear(scene, g, 288)));
    }
  }

  /** The mean of a bed of 1.2 by 6 m half in the shade of the house, against cells of 2.5 cm. */
  private static void cellSize(BenchScene scene) {
    double exact = bedMean(scene, 0.025);
    for (double cell : new double[] {0.1, 0.2, 0.3, 0.6}) {
      double off = bedMean(scene, cell) / exact - 1;
      say("cells of %.2f m: mean of a bed off by %.2f %%", cell, off * 100);
    }
  }

  private static double bedMean(BenchScene scene, double cellM) {
    Grid bed =
        new Grid(19, 17.5, cellM, (int) Math.round(1.2 / cellM), (int) Math.round(6 / cellM));
    double sum = 0;
    for (double hours : engineYear(scene, bed, 288)) {
      sum += hours;
    }
    return sum / bed.cells();
  }
}
