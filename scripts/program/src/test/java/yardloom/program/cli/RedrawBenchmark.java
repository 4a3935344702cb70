package yardloom.program.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import yardloom.kernel.fact.Again;
import yardloom.kernel.fact.Results;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.SheetMemory;
import yardloom.sheet.svg.ArcMemory;
import yardloom.sheet.svg.SvgWriter;

/**
 * Measures what `watch` does after a bed of a demo plan was moved, in one process, in milliseconds
 * of its thread's processor time. Run {@code scripts/program/benchmark.sh redraw}.
 */
public final class RedrawBenchmark {
  /** A bed that another picture has elsewhere. */
  private static final String BED = "rect(3.5.ft + 7.ft * i, 64";

  private final Toolkit toolkit = Toolkit.load();
  private final Recall recall = new Recall();
  private final SheetMemory memory = new SheetMemory();
  private final ArcMemory arcs = new ArcMemory();
  private final Map<String, Long> readers = new TreeMap<>();
  private final Map<String, ComposedSheet> shown = new LinkedHashMap<>();

  private final String inView;
  private Outcome last;

  private RedrawBenchmark(String inView) {
    this.inView = inView;
  }

  /** Thread time of the parts of one redraw, in ms. */
  private record Redraw(
      double read, double view, double study, double sheets, double svg, int worked, int drawn) {
    double sum() {
      return read + study + sheets + svg;
    }

    /** Until the sheet in view is there. */
    double untilView() {
      return read + view;
    }
  }

  /**
   * Prints the redraws and their median.
   *
   * @param args the plan, how many redraws, and with a third argument every reader's time in the
   *     last one; a fourth argument is the id of the sheet in view, which is drawn first, and then
   *     the redraws are also watched, by the clock
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path plan = Path.of(args[0]).toAbsolutePath();
    int times = Integer.parseInt(args[1]);
    RedrawBenchmark benchmark = new RedrawBenchmark(args.length > 3 ? args[3] : "");
    String text = Files.readString(plan);
    Path script = plan.resolveSibling("moved-" + plan.getFileName());
    List<Redraw> redraws = new ArrayList<>();
    for (int i = 0; i <= times; i++) {
      Files.writeString(script, i == 0 ? text : moved(text, i));
      Redraw redraw = benchmark.redraw(script);
      System.out.println((i == 0 ? "first " : "redraw ") + words(redraw));
      if (i > 0) {
        redraws.add(redraw);
      }
    }
    if (args.length > 3) {
      Files.writeString(script, text);
      try (WatchedRedraws watched = new WatchedRedraws(script, args[3])) {
        watched.run(times, i -> moved(text, i));
      }
    }
    Files.delete(script);
    if (args.length > 2) {
      benchmark.readers.entrySet().stream()
          .sorted((a, b) -> Long.compare(b.getValue(), a.getValue()))
          .limit(Integer.getInteger("readers", 40))
          .forEach(
              e -> System.out.printf(Locale.ROOT, "%8.1f %s%n", e.getValue() / 1e6, e.getKey()));
    }
    if (args.length > 3) {
      List<Redraw> late = late(redraws, Redraw::untilView);
      System.out.printf(
          Locale.ROOT,
          "median until %s is drawn: %.0f ms%n",
          args[3],
          late.get(late.size() / 2).untilView());
    }
    System.out.println("median " + words(median(redraws)));
  }

  /** Never where it was before, so that the script is compiled each time too. */
  private static String moved(String text, int i) {
    return text.replace(
        BED, "rect(3.5.ft + 7.ft * i + (i == 7 ? " + (10 + i) + " * 0.025.ft : 0.ft), 64");
  }

  private static String words(Redraw r) {
    return String.format(
        Locale.ROOT,
        "%.0f ms: read %.0f, sheet in view %.0f, study %.0f (%d worked), sheets %.0f (%d drawn),"
            + " svg %.0f",
        r.sum(),
        r.read(),
        r.view(),
        r.study(),
        r.worked(),
        r.sheets(),
        r.drawn(),
        r.svg());
  }

  /** The first half only warms up. */
  private static Redraw median(List<Redraw> redraws) {
    List<Redraw> late = late(redraws, Redraw::sum);
    return late.get(late.size() / 2);
  }

  private static List<Redraw> late(List<Redraw> redraws, ToDoubleFunction<Redraw> by) {
    return redraws.subList(redraws.size() / 2, redraws.size()).stream()
        .sorted(Comparator.comparingDouble(by))
        .toList();
  }

  /** Draws the sheet in view before the others, as `watch` does. */
  private void ahead(Plan plan) {
    if (last != null && !inView.isEmpty()) {
      Outcome outcome = new Study(toolkit.plugins()).ahead(plan, new Timed(), last, inView).get();
      recall.keepPart();
      List<ComposedSheet> pages = SheetSet.ahead(outcome, Papers.of(null, plan), inView, memory);
      pages.forEach(p -> SvgWriter.element(p, arcs));
    }
  }

  private Redraw redraw(Path script) {
    readers.clear();
    double[] at = new double[5];
    at[0] = nowMs();
    Plan plan = toolkit.read(script, Map.of());
    double read = nowMs() - at[0];
    ahead(plan);
    double view = nowMs() - at[0] - read;
    at[1] = nowMs();
    Outcome outcome = new Study(toolkit.plugins()).of(plan, new Timed());
    recall.keep();
    last = outcome;
    at[2] = nowMs();
    List<ComposedSheet> sheets = SheetSet.of(outcome, Papers.of(null, plan), memory, Hands.ONE);
    at[3] = nowMs();
    int drawn = 0;
    for (ComposedSheet sheet : sheets) {
      if (shown.put(sheet.id(), sheet) != sheet) {
        long before = now();
        SvgWriter.element(sheet, arcs);
        readers.merge("svg " + sheet.id(), now() - before, Long::sum);
        drawn++;
      }
    }
    arcs.next();
    at[4] = nowMs();
    return new Redraw(
        read, view, at[2] - at[1], at[3] - at[2], at[4] - at[3], recall.worked().size(), drawn);
  }

  private static double nowMs() {
    return now() / 1e6;
  }

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** The memory of the last run, with the time that each reader takes. */
  private final class Timed implements Again {
    @Override
    public void over(Plan plan, Results facts) {
      recall.over(plan, facts);
    }

    @Override
    public void offers(Function<Object, ?> tables) {
      recall.offers(tables);
    }

    @Override
    public <T> T of(String reader, Supplier<T> work) {
      long before = now();
      boolean[] worked = new boolean[1];
      long[] itself = new long[1];
      T result =
          recall.of(
              reader,
              () -> {
                worked[0] = true;
                long began = now();
                T made = work.get();
                itself[0] = now() - began;
                return made;
              });
      readers.merge((worked[0] ? "WORK " : "kept ") + reader, itself[0], Long::sum);
      readers.merge("memory of " + reader, now() - before - itself[0], Long::sum);
      return result;
    }
  }
}
