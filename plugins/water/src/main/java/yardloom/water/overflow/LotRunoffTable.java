package yardloom.water.overflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.overflow.formula.CurveNumber;
import yardloom.water.overflow.formula.SoilGroup;

/**
 * What runs off the lot in a storm, as a lawn round the house and as planned; where the plan has a
 * basin, whose storm it takes.
 */
public final class LotRunoffTable implements TableMaker {
  private static final String ID = "lot-runoff";
  private static final String LAWN = "lawn fair";
  private static final String MULCH = "mulched ground";
  private static final Source BALANCE = Source.commonPractice("runoff less what basins hold");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SOIL);
  }

  /** Ground of one kind, before and after. */
  private record Cover(String title, String cover, Area before, Area after) {}

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Runoff of the lot, before and after")
            .column(Column.text("ground", "Ground"))
            .column(Column.of("curve-number", "Curve number", Measure.COUNT))
            .column(Column.of("before", "Area before", Measure.AREA))
            .column(Column.of("runoff-before", "Runs off before", Measure.WATER))
            .column(Column.of("after", "Area after", Measure.AREA))
            .column(Column.of("runoff-after", "Runs off after", Measure.WATER));
    List<Entry<Basin>> basins = plan.attributes().all(Basin.KEY);
    if (basins.isEmpty() || plan.lot().isEmpty()) {
      return table.build();
    }
    Length storm = basins.get(0).value().storm();
    SourceRef said = basins.get(0).place();
    SoilGroup group = Storms.group(BasinTable.intake(facts));
    List<CurveNumber.Patch> before = new ArrayList<>();
    List<CurveNumber.Patch> after = new ArrayList<>();
    for (Cover cover : covers(plan)) {
      Cited<Double> number = CurveNumbers.of(cover.cover(), group);
      before.add(new CurveNumber.Patch(cover.before(), number.value()));
      after.add(new CurveNumber.Patch(cover.after(), number.value()));
      table.row(
          Cell.text(cover.title()),
          Cell.number((int) Math.round(number.value())),
          Cell.of(cover.before()),
          Cell.of(Storms.runoff(cover.before(), said, number, storm, said)),
          Cell.of(cover.after()),
          Cell.of(Storms.runoff(cover.after(), said, number, storm, said)));
    }
    Area lot = plan.lot().get().shape().area();
    Volume first = lot.deep(CurveNumber.weightedRunoff(storm, before));
    Volume last = lot.deep(CurveNumber.weightedRunoff(storm, after));
    Derived<Volume> kept = kept(plan, facts, basins);
    table.row(
        Cell.text("kept by the basins"),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.of(kept));
    table.total(
        Cell.text("Leaves the lot"),
        Cell.BLANK,
        Cell.of(lot),
        Cell.of(first),
        Cell.of(lot),
        Cell.of(last.minus(kept.value()).max(Volume.ZERO)));
    table.note(
        String.format(
            Locale.ROOT,
            "A storm of %s in a day, soil group %s%s. Each ground runs off by itself and the parts"
                + " are added; one mean number for all (%.0f before, %.0f after) would tell of"
                + " less. Before: lawn in fair condition round buildings and paving.",
            Say.both(Measure.RAIN, storm, plan.info().units()),
            group,
            BasinTable.intake(facts).isPresent() ? "" : ", the slowest, as no soil is given",
            CurveNumber.composite(before),
            CurveNumber.composite(after)));
    return table.build();
  }

  /** Never more than what their roofs shed. */
  private static Derived<Volume> kept(Plan plan, Facts facts, List<Entry<Basin>> basins) {
    Derived.Builder why = Derived.by("sum over basins of min(runoff, held)", BALANCE);
    Volume sum = Volume.ZERO;
    for (Entry<Basin> basin : basins) {
      Optional<Element.Roof> roof = basin.value().roof(plan);
      if (roof.isPresent()) {
        Derived<Volume> runoff =
            Storms.roofRunoff(
                roof.get(), basins.get(0).value().storm(), basin.place(), BasinTable.intake(facts));
        Derived<Volume> holds = BasinTable.holds(basin);
        why.from("runoff to " + basin.value().name(), runoff)
            .from("held by " + basin.value().name(), holds);
        sum = sum.plus(runoff.value().min(holds.value()));
      }
    }
    return why.gives(sum);
  }

  private static List<Cover> covers(Plan plan) {
    Shape lot = plan.lot().orElseThrow().shape();
    // Rain that falls on eaves is shed like that on the house under them.
    List<Shape> roofed = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> roofed.add(b.shape()));
    plan.all(Element.Roof.class).forEach(r -> roofed.add(r.shape()));
    Shape built = lot.and(Shape.union(roofed));
    Shape paved =
        lot.and(
                Shape.union(
                    plan.all(Element.Paving.class).stream().map(Element.Paving::shape).toList()))
            .minus(built);
    List<Shape> soft = new ArrayList<>();
    plan.all(Element.Bed.class).forEach(b -> soft.add(b.shape()));
    plan.all(Element.Path.class).forEach(p -> soft.add(p.shape()));
    plan.all(Element.MulchedGround.class).forEach(g -> soft.add(g.shape()));
    Shape mulched = lot.and(Shape.union(soft)).minus(built).minus(paved);
    Area lawn = lot.area().minus(built.area()).minus(paved.area());
    return List.of(
        new Cover("roofs", "roof", built.area(), built.area()),
        new Cover("paving", "paving", paved.area(), paved.area()),
        new Cover("beds, paths and ground under mulch", MULCH, Area.ZERO, mulched.area()),
        new Cover("lawn", LAWN, lawn, lawn.minus(mulched.area())));
  }
}
