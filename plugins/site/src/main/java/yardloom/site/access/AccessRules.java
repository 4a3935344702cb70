package yardloom.site.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.WayStart;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
import yardloom.facts.built.Gate;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Route;
import yardloom.kernel.geom.WaysFrom;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.site.element.Show;
import yardloom.site.element.Sources;

/** Whether every bed can be reached from the gates and from heaps, and how far it is. */
public final class AccessRules {
  private AccessRules() {}

  /** A gate or a place where heaps are tipped, with the ways from there. */
  private record Start(String name, SourceRef place, WaysFrom ways) {}

  /** The rule that every bed is reached. */
  public static final class Rule implements Check {
    @Override
    public String id() {
      return "site.access";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.WAYS);
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      return access(plan, facts.get(YardFacts.WAYS)).stream().sorted().toList();
    }
  }

  /** The table of the ways to the beds, for the desk. */
  public static final class Routes implements TableMaker {
    @Override
    public String id() {
      return "routes";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.WAYS);
    }

    @Override
    public OnPaper onPaper() {
      return OnPaper.REPORT;
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      return routes(plan, facts.get(YardFacts.WAYS));
    }
  }

  private static List<Start> starts(Plan plan, Ways ways) {
    List<Start> starts = new ArrayList<>();
    for (Attributes.Entry<Gate> gate : plan.attributes().all(Gate.KEY)) {
      Gate at = gate.value();
      starts.add(new Start(at.name(), gate.place(), ways.from(at.at())));
    }
    for (Attributes.Entry<WayStart> heap : plan.attributes().all(WayStart.KEY)) {
      WayStart at = heap.value();
      starts.add(new Start("drop zone " + at.name(), heap.place(), ways.from(at.ground())));
    }
    return starts;
  }

  private static List<Finding> access(Plan plan, Ways ways) {
    List<Element.Bed> beds = plan.all(Element.Bed.class);
    List<Start> starts = starts(plan, ways);
    List<Finding> findings = new ArrayList<>();
    if (!beds.isEmpty()) {
      starts.stream().filter(s -> s.ways().isCutOff()).forEach(s -> findings.add(cutOff(plan, s)));
    }
    List<Start> joined = starts.stream().filter(s -> !s.ways().isCutOff()).toList();
    for (Element.Bed bed : beds) {
      List<Start> far =
          joined.stream().filter(s -> s.ways().withBarrow(bed.shape()).isEmpty()).toList();
      if (!far.isEmpty()) {
        findings.add(unreached(plan, bed, far));
      }
    }
    return findings;
  }

  /** One finding for a bed, whatever the number of places it is not reached from. */
  private static Finding unreached(Plan plan, Element.Bed bed, List<Start> far) {
    boolean onFoot = far.stream().allMatch(s -> s.ways().onFoot(bed.shape()).isPresent());
    return Finding.of(
            "site.access",
            Severity.WARNING,
            "no way wide enough for a barrow ("
                + Show.small(plan, WaysCalculator.barrowWidth(plan))
                + ") leads here from "
                + far.stream().map(s -> "'" + s.name() + "'").collect(Collectors.joining(" or "))
                + (onFoot ? "; it can be reached on foot" : ""),
            "lead a path to it, join the paths, or widen the narrow one",
            Sources.PATH_WIDTH)
        .about(bed.id(), bed.place());
  }

  /** One finding where no bed at all can be reached, instead of one for each bed. */
  private static Finding cutOff(Plan plan, Start start) {
    return Finding.of(
            "site.access",
            Severity.WARNING,
            "no path or hard surface wide enough for a barrow ("
                + Show.small(plan, WaysCalculator.barrowWidth(plan))
                + ") comes to '"
                + start.name()
                + "', so no bed can be reached from there",
            "set it on or beside a path or a hard surface, or lead a path to it",
            Sources.PATH_WIDTH)
        .at(start.place());
  }

  private static Table routes(Plan plan, Ways ways) {
    Table.Builder table =
        Table.titled("routes", "Haul distances")
            .column(Column.text("from", "from"))
            .column(Column.text("bed", "bed"))
            .column(Column.of("barrow", "with a barrow", Measure.LENGTH))
            .column(Column.of("foot", "on foot", Measure.LENGTH));
    for (Start start : starts(plan, ways)) {
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        table.row(
            Cell.text(start.name()),
            Cell.text(bed.id().name()),
            cell(start.ways().withBarrow(bed.shape())),
            cell(start.ways().onFoot(bed.shape())));
      }
    }
    return table.note("Along the middle of paths and straight across hard surfaces.").build();
  }

  private static Cell cell(Optional<Route> way) {
    return way.<Cell>map(
            w ->
                Cell.of(
                    Derived.by("way = Σ √((xᵢ₊₁ − xᵢ)² + (yᵢ₊₁ − yᵢ)²)", WaysFrom.SOURCE)
                        .from("bends", w.bends())
                        .gives(w.length())))
        .orElse(Cell.text("none"));
  }
}
