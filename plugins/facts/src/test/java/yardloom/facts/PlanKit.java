package yardloom.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.GroundScope;
import yardloom.kernel.scope.PathScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Plans made by hand, in feet, without a script. */
public final class PlanKit {
  public final Draft draft;
  private int line;

  public PlanKit(UnitSystem units) {
    draft = new Draft(new PlanInfo("test", "Test yard", "", "", "", "", units, "USD"));
  }

  public static PlanKit us() {
    return new PlanKit(UnitSystem.US);
  }

  public SourceRef next() {
    return new SourceRef("test.groovy", ++line, 1);
  }

  public PlanScope words() {
    return new PlanScope(draft, next());
  }

  public static Shape box(double xFt, double yFt, double widthFt, double depthFt) {
    return Shape.rectangle(
        new Point(Length.feet(xFt), Length.feet(yFt)), Length.feet(widthFt), Length.feet(depthFt));
  }

  public BedScope bed(String name, Element.BedUse use, Shape shape) {
    ElementDraft d = add(ElementKind.BED, name, c -> new Element.Bed(c, shape, use));
    return new BedScope(draft, d, next());
  }

  public GroundScope ground(String name, Shape shape) {
    ElementDraft d =
        add(ElementKind.MULCHED_GROUND, name, c -> new Element.MulchedGround(c, shape));
    return new GroundScope(draft, d, next());
  }

  public PathScope path(String name, Shape shape) {
    Line middle = Line.between(Point.metres(0, 0), Point.metres(1, 0));
    ElementDraft d =
        add(
            ElementKind.PATH,
            name,
            c -> new Element.Path(c, middle, shape, Length.feet(3), Element.PathUse.FOOT));
    return new PathScope(draft, d, next());
  }

  /** A path along its middle, in feet: x, y, x, y … */
  public PathScope path(String name, double widthFt, double... middleFt) {
    List<Point> bends = new ArrayList<>();
    for (int i = 0; i < middleFt.length; i += 2) {
      bends.add(new Point(Length.feet(middleFt[i]), Length.feet(middleFt[i + 1])));
    }
    Line middle = Line.through(bends);
    Length width = Length.feet(widthFt);
    ElementDraft d =
        add(
            ElementKind.PATH,
            name,
            c -> new Element.Path(c, middle, middle.strip(width), width, Element.PathUse.BARROW));
    return new PathScope(draft, d, next());
  }

  public TreeScope tree(String name, double xFt, double yFt, double trunkIn) {
    Point at = new Point(Length.feet(xFt), Length.feet(yFt));
    ElementDraft d =
        add(
            ElementKind.TREE,
            name,
            c ->
                new Element.Tree(
                    c,
                    at,
                    Shape.circle(at, Length.feet(6)),
                    Length.feet(12),
                    Length.feet(12),
                    Length.feet(4),
                    Length.inches(trunkIn),
                    Element.Leaf.DECIDUOUS));
    return new TreeScope(draft, d, next());
  }

  public void house(Shape shape) {
    add(
        ElementKind.BUILDING,
        "house",
        c ->
            new Element.Building(
                c,
                shape,
                Length.feet(9),
                Length.feet(15),
                Length.feet(1),
                Element.RoofForm.GABLE,
                false));
  }

  private ElementDraft add(
      ElementKind kind,
      String name,
      java.util.function.Function<Element.Common, ? extends Element> finish) {
    return draft.add(new ElementId(kind, name), next(), finish);
  }

  public Plan plan() {
    return draft.freeze();
  }

  /** The plugins on the class path, by id. */
  public static List<YardPlugin> plugins() {
    return ServiceLoader.load(YardPlugin.class).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparing(p -> p.info().id()))
        .toList();
  }

  /**
   * What the checks of the plugins find, less those of the yard itself: these plans have no lot to
   * speak of, and the site plugin tests its own.
   */
  public static List<Finding> findings(Plan plan, Facts facts) {
    return plugins().stream()
        .filter(p -> !p.info().id().equals("site"))
        .flatMap(p -> p.checks().stream())
        .flatMap(c -> c.run(plan, facts).stream())
        .toList();
  }

  /** The sheets of the plugins; nothing is offered to them. */
  public static List<SheetPlan> sheets(Plan plan, Facts facts) {
    return plugins().stream()
        .flatMap(p -> p.sheets().stream())
        .flatMap(m -> m.make(plan, facts, Offers.NONE).stream())
        .toList();
  }

  /** The table of that id, as one of the plugins makes it. */
  public static Table table(String id, Plan plan, Facts facts) {
    return plugins().stream()
        .flatMap(p -> p.tables().stream())
        .filter(m -> m.id().equals(id))
        .map(m -> m.make(plan, facts))
        .findFirst()
        .orElseThrow();
  }

  /** The rows of that table as they are printed, cells parted by bars. */
  public static List<String> printed(String id, Plan plan, Facts facts) {
    Table table = table(id, plan, facts);
    TableFormat format = TableFormat.of(plan.info());
    return table.rows().stream()
        .map(
            row ->
                IntStream.range(0, row.size())
                    .mapToObj(i -> format.text(table.columns().get(i), row.get(i)))
                    .collect(Collectors.joining(" | ")))
        .toList();
  }

  /** Runs the plugins, with stands that another plugin would give. */
  public static Results run(Plan plan, Stand... stands) {
    return run(plan, List.of(stands), Optional.empty());
  }

  /** Runs the plugins, with stands and a harvest that another plugin would give. */
  public static Results run(Plan plan, List<Stand> stands, Optional<Harvest> harvest) {
    return run(plan, stands, harvest, List.of());
  }

  /** The same, with dripline that water would give. */
  public static Results run(
      Plan plan, List<Stand> stands, Optional<Harvest> harvest, List<Dripline> driplines) {
    List<Calculator> calculators = new ArrayList<>();
    plugins().forEach(p -> calculators.addAll(p.calculators()));
    calculators.add(
        new Calculator() {
          @Override
          public String id() {
            return "test.plants";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.STANDS, YardFacts.JOBS, YardFacts.HARVEST, YardFacts.DRIPLINES);
          }

          @Override
          public void compute(Plan p, Facts in, Sink out) {
            for (Stand s : stands) {
              out.give(YardFacts.STANDS, s);
              out.give(YardFacts.JOBS, job(s));
            }
            driplines.forEach(d -> out.give(YardFacts.DRIPLINES, d));
            harvest.ifPresent(h -> out.give(YardFacts.HARVEST, h));
          }
        });
    return FactGraph.of(calculators).run(plan);
  }

  /** As if all came in pots or as seed. */
  private static Job job(Stand s) {
    return s.placed().drills().isPresent()
        ? new Job(
            WorkTask.SOW,
            WorkPhase.PLANT,
            Derived.given(s.placed().drills().get(), s.plant(), s.place()))
        : new Job(
            WorkTask.PLANT_POT,
            WorkPhase.PLANT,
            Derived.given(s.placed().at().size(), s.plant(), s.place()));
  }

  /** The bill's line of one item, if there is one. */
  public static Optional<BillLine> line(Results results, String item) {
    List<BillLine> lines = results.all(YardFacts.BILL);
    return lines.stream().filter(l -> l.item().equals(item)).findFirst();
  }
}
