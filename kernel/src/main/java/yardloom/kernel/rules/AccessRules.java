package yardloom.kernel.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.WayNetwork;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.words.Gate;
import yardloom.kernel.words.WayStart;

/** Whether every bed can be reached from the gates and from heaps, and how far it is. */
final class AccessRules {
  /** Somebody with a barrow works this far beside a path, or starts this far beside it. */
  private static final Length BESIDE = Length.metres(0.6);

  private static final Source SHORTEST =
      Source.computed(
          "A note on two problems in connexion with graphs",
          "E. W. Dijkstra, Numerische Mathematik 1",
          1959,
          "pp. 269-271");

  private AccessRules() {}

  /** The width that a barrow needs in this plan. */
  private static Length least(Plan plan) {
    return PathStandard.of(plan, PathUse.BARROW).least().value();
  }

  /** A gate or a place where heaps are tipped, with the ways from there. */
  private record Start(String name, SourceRef place, WayNetwork barrow, WayNetwork foot) {}

  private static List<Start> starts(Plan plan) {
    List<WayNetwork.Way> wide = ways(plan, least(plan));
    List<WayNetwork.Way> all = ways(plan, Length.ZERO);
    List<Start> starts = new ArrayList<>();
    for (Attributes.Entry<Gate> gate : plan.attributes().all(Gate.KEY)) {
      Gate at = gate.value();
      starts.add(
          new Start(
              at.name(),
              gate.place(),
              new WayNetwork(wide, at.at(), BESIDE),
              new WayNetwork(all, at.at(), BESIDE)));
    }
    for (Attributes.Entry<WayStart> heap : plan.attributes().all(WayStart.KEY)) {
      WayStart at = heap.value();
      starts.add(
          new Start(
              "tip spot " + at.name(),
              heap.place(),
              new WayNetwork(wide, at.ground(), BESIDE),
              new WayNetwork(all, at.ground(), BESIDE)));
    }
    return starts;
  }

  private static List<WayNetwork.Way> ways(Plan plan, Length leastWidth) {
    List<WayNetwork.Way> ways = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (path.width().metres() >= leastWidth.metres() - 1e-9) {
        ways.add(new WayNetwork.Way(path.shape(), Optional.of(path.line())));
      }
    }
    for (Element.Paving paving : plan.all(Element.Paving.class)) {
      ways.add(new WayNetwork.Way(paving.shape(), Optional.empty()));
    }
    return ways;
  }

  static List<Finding> access(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Start start : starts(plan)) {
      if (start.barrow().isCutOff() && !plan.all(Element.Bed.class).isEmpty()) {
        findings.add(cutOff(plan, start));
        continue;
      }
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        if (start.barrow().to(bed.shape(), BESIDE).isEmpty()) {
          boolean onFoot = start.foot().to(bed.shape(), BESIDE).isPresent();
          findings.add(
              Finding.of(
                      "kernel.access",
                      Severity.WARNING,
                      "no way wide enough for a barrow ("
                          + Show.small(plan, least(plan))
                          + ") leads here from '"
                          + start.name()
                          + "'"
                          + (onFoot ? "; it can be reached on foot" : ""),
                      "lead a path to it, join the paths, or widen the narrow one",
                      Sources.PATH_WIDTH)
                  .about(bed.id(), bed.place()));
        }
      }
    }
    return findings;
  }

  /** One finding where no bed at all can be reached, instead of one for each bed. */
  private static Finding cutOff(Plan plan, Start start) {
    return Finding.of(
            "kernel.access",
            Severity.WARNING,
            "no path or hard surface wide enough for a barrow ("
                + Show.small(plan, least(plan))
                + ") comes to '"
                + start.name()
                + "', so no bed can be reached from there",
            "set it on or beside a path or a hard surface, or lead a path to it",
            Sources.PATH_WIDTH)
        .at(start.place());
  }

  static Table routes(Plan plan) {
    Table.Builder table =
        Table.titled("routes", "Ways to the beds")
            .column(Column.text("from", "from"))
            .column(Column.text("bed", "bed"))
            .column(Column.of("barrow", "with a barrow", Measure.LENGTH))
            .column(Column.of("foot", "on foot", Measure.LENGTH));
    for (Start start : starts(plan)) {
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        table.row(
            Cell.text(start.name()),
            Cell.text(bed.id().name()),
            cell(start.barrow().to(bed.shape(), BESIDE)),
            cell(start.foot().to(bed.shape(), BESIDE)));
      }
    }
    return table.note("Along the middle of paths and straight across hard surfaces.").build();
  }

  private static Cell cell(Optional<Length> way) {
    return way.<Cell>map(w -> Cell.of(Derived.by("shortest way", SHORTEST).gives(w)))
        .orElse(Cell.text("none"));
  }
}
