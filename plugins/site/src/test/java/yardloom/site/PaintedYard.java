package yardloom.site;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.lot.LotWords;

/** A yard in metres that a test writes with the words of the site, and what painters make of it. */
final class PaintedYard {
  final Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "$"));
  final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  static Length m(double metres) {
    return Length.metres(metres);
  }

  static Point p(double x, double y) {
    return Point.metres(x, y);
  }

  static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(p(x, y), m(width), m(depth));
  }

  /** A lot from (0, 0) to that corner. */
  PaintedYard lot(double width, double depth) {
    LotWords.lot(in, List.of(p(0, 0), p(width, 0), p(width, depth), p(0, depth)), null);
    return this;
  }

  static Painter painter(String layer) {
    return new SitePlugin()
        .painters().stream().filter(x -> x.layer().id().equals(layer)).findAny().orElseThrow();
  }

  List<Mark> paint(String layer) {
    Plan plan = draft.freeze();
    return painter(layer).paint(plan, FactGraph.of(List.of()).run(plan));
  }

  /** The entries with their styles. */
  List<String> legend(String layer) {
    Plan plan = draft.freeze();
    return painter(layer).legend(plan, FactGraph.of(List.of()).run(plan)).stream()
        .map(PaintedYard::shown)
        .toList();
  }

  private static String shown(LegendEntry entry) {
    String form = entry.symbol().map(s -> " " + s).orElse(entry.isLine() ? " line" : "");
    return entry.text() + " | " + entry.style().name() + form;
  }

  /** What is drawn: style, size and place, one line for each mark. */
  List<String> drawn(String layer) {
    return paint(layer).stream().map(PaintedYard::shown).toList();
  }

  /** All that the site makes of the yard. */
  Outcome study() {
    return new Study(PluginLoader.of(List.of(new SitePlugin()))).of(draft.freeze());
  }

  /** A table of the study as it is printed, one line for each row. */
  static List<String> printed(Outcome outcome, String id) {
    PlanInfo info = outcome.plan().info();
    TableFormat format = TableFormat.of(info);
    Table table = outcome.tables().stream().filter(t -> t.id().equals(id)).findAny().orElseThrow();
    return table.rows().stream()
        .map(
            row ->
                IntStream.range(0, row.size())
                    .mapToObj(i -> format.text(table.columns().get(i), row.get(i)))
                    .collect(Collectors.joining(" | ")))
        .toList();
  }

  static String shown(Mark mark) {
    if (mark instanceof Mark.Region r) {
      return text(
          "%s %.2f m² at %s",
          r.style().name(), r.shape().area().squareMetres(), at(r.shape().centroid()));
    }
    if (mark instanceof Mark.Stroke s) {
      return text("%s from %s to %s", s.style().name(), at(s.line().start()), at(s.line().end()));
    }
    if (mark instanceof Mark.Symbol s) {
      return text("%s %s %.2f m at %s", s.style().name(), s.form(), s.size().metres(), at(s.at()));
    }
    if (mark instanceof Mark.Label l) {
      String ground = l.ground().map(g -> text(" on %.1f m²", g.area().squareMetres())).orElse("");
      return text(
              "'%s' %.1f mm %s at %s",
              l.text().replace("\n", "/"), l.heightMm(), l.anchor(), at(l.at()))
          + ground;
    }
    Mark.Dimension d = (Mark.Dimension) mark;
    return text(
        "%s from %s to %s off %.2f", d.text(), at(d.from()), at(d.to()), d.offset().metres());
  }

  private static String at(Point p) {
    // Adding zero makes -0.00 read 0.00.
    return text("%.2f,%.2f", round(p.x()), round(p.y()));
  }

  private static double round(Length length) {
    return Math.round(length.metres() * 100) / 100.0 + 0.0;
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
