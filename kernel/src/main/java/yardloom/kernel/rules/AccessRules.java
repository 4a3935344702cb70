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
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.words.Gate;

/** Whether every bed can be reached from the gates, and how far it is. */
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

  private static WayNetwork network(Plan plan, Gate gate, Length leastWidth) {
    List<WayNetwork.Way> ways = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (path.width().metres() >= leastWidth.metres() - 1e-9) {
        ways.add(new WayNetwork.Way(path.shape(), Optional.of(path.line())));
      }
    }
    for (Element.Paving paving : plan.all(Element.Paving.class)) {
      ways.add(new WayNetwork.Way(paving.shape(), Optional.empty()));
    }
    return new WayNetwork(ways, gate.at(), BESIDE);
  }

  static List<Finding> access(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<Gate> gate : plan.attributes().all(Gate.KEY)) {
      WayNetwork barrow = network(plan, gate.value(), least(plan));
      WayNetwork foot = network(plan, gate.value(), Length.ZERO);
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        if (barrow.to(bed.shape(), BESIDE).isEmpty()) {
          boolean onFoot = foot.to(bed.shape(), BESIDE).isPresent();
          findings.add(
              Finding.of(
                      "kernel.access",
                      Severity.WARNING,
                      "no way wide enough for a barrow ("
                          + Show.small(plan, least(plan))
                          + ") leads here from '"
                          + gate.value().name()
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

  static Table routes(Plan plan) {
    Table.Builder table =
        Table.titled("routes", "Ways to the beds")
            .column(Column.text("from", "from"))
            .column(Column.text("bed", "bed"))
            .column(Column.of("barrow", "with a barrow", Measure.LENGTH))
            .column(Column.of("foot", "on foot", Measure.LENGTH));
    for (Attributes.Entry<Gate> gate : plan.attributes().all(Gate.KEY)) {
      WayNetwork barrow = network(plan, gate.value(), least(plan));
      WayNetwork foot = network(plan, gate.value(), Length.ZERO);
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        table.row(
            Cell.text(gate.value().name()),
            Cell.text(bed.id().name()),
            cell(barrow.to(bed.shape(), BESIDE)),
            cell(foot.to(bed.shape(), BESIDE)));
      }
    }
    return table.note("Along the middle of paths and straight across hard surfaces.").build();
  }

  private static Cell cell(Optional<Length> way) {
    return way.<Cell>map(w -> Cell.of(Derived.by("shortest way", SHORTEST).gives(w)))
        .orElse(Cell.text("none"));
  }
}
