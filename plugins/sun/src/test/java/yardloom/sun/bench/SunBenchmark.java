package yardloom.sun.bench;

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

  private static double seconds(long since) {
    return (System.nanoTime() - since) / 1e9;
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }

  public static void main(String[] args) {
    int stride = args.length > 0 ? Integer.parseInt(args[0]) : 97;
    BenchScene scene = new BenchScene(14);
    Grid grid = BenchScene.grid(0.1);
    long start = System.nanoTime();
    double[] cold = engineYear(scene, grid, 288);
    double coldS = seconds(start);
    say("cold, 5-minute columns: %.2f s for %d cells", coldS, grid.cells());
    for (int i = 0; i < 3; i++) {
      start = System.nanoTime();
      engineYear(scene, grid, 288);
      say("warm: %.2f s", seconds(start));
    }
    Runtime runtime = Runtime.getRuntime();
    say("memory in use %d MB", (runtime.totalMemory() - runtime.freeMemory()) >> 20);
    BruteForce brute =
        new BruteForce(
            BenchScene.LATITUDE, BenchScene.LONGITUDE, SunYear.REFERENCE_YEAR, 5, scene.blockers);
    start = System.nanoTime();
    double[] slow = brute.yearHours(grid, stride);
    double bruteS = seconds(start) * grid.cells() / slow.length;
    say(
        "brute force: %d rays a cell, %d cells tried, %.0f s for all",
        brute.rays(), slow.length, bruteS);
    double[] off = difference(cold, slow, stride);
    say("worst cell off by %.3f %%, mean %.4f %%", off[0] * 100, off[1] * 100);
    say("faster %.0f times (cold)", bruteS / coldS);
    for (int columns : new int[] {96, 144, 288, 480, 720, 1440}) {
      start = System.nanoTime();
      double[] hours = engineYear(scene, grid, columns);
      double s = seconds(start);
      double[] d = difference(hours, slow, stride);
      say(
          "columns %d (%.1f min): %.2f s, worst %.3f %%, mean %.4f %%",
          columns, 1440.0 / columns, s, d[0] * 100, d[1] * 100);
    }
    for (int trees : new int[] {0, 14, 34, 74}) {
      BenchScene more = new BenchScene(trees);
      start = System.nanoTime();
      engineYear(more, grid, 288);
      say("obstacles %d: %.2f s", 6 + trees, seconds(start));
    }
    for (double cell : new double[] {0.4, 0.2, 0.1}) {
      start = System.nanoTime();
      Grid g = BenchScene.grid(cell);
      engineYear(scene, g, 288);
      say("cells %d: %.2f s", g.cells(), seconds(start));
    }
  }
}
