package yardloom.planting;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantingDay;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.placing.PlantingWords;

/** Small planting plans in feet, with facts that other plugins would give. */
public final class PlantYard {
  private record Given<T>(FactKey<T> key, T value) {
    void to(yardloom.kernel.fact.Sink out) {
      out.give(key, value);
    }
  }

  public final Draft draft;
  private final List<Given<?>> given = new ArrayList<>();
  private int line;

  /**
   * @param date of the plan; empty if it has none
   */
  public PlantYard(String date, UnitSystem units) {
    draft = new Draft(new PlanInfo("t", "T", "", "", date, "", units, "USD"));
  }

  public static PlantYard us(String date) {
    return new PlantYard(date, UnitSystem.US);
  }

  public SourceRef next() {
    return new SourceRef("yard.groovy", ++line, 1);
  }

  public PlanScope words() {
    return new PlanScope(draft, next());
  }

  /** A bed with its lower left corner at a point. */
  public BedScope bed(String name, double xFt, double yFt, double wideFt, double deepFt) {
    Shape shape = PlanKit.box(xFt, yFt, wideFt, deepFt);
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, name),
            next(),
            c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
    return new BedScope(draft, element, next());
  }

  /** The same with one kind in it, in squares. */
  public BedScope planted(BedScope bed, String plant, double spacingFt) {
    PlantingWords.plant(
        bed, plant, Length.feet(spacingFt), Length.feet(spacingFt), null, null, null, null);
    return bed;
  }

  /** A tree of a kind; with a trunk of more than 2 in it stands already. */
  public TreeScope tree(String name, String kind, double xFt, double yFt, double trunkIn) {
    Point at = new Point(Length.feet(xFt), Length.feet(yFt));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.TREE, name),
            next(),
            c ->
                new Element.Tree(
                    c,
                    at,
                    Shape.circle(at, Length.feet(6)),
                    Length.feet(12),
                    Length.feet(14),
                    Length.feet(4),
                    Length.inches(trunkIn),
                    Element.Leaf.DECIDUOUS));
    TreeScope tree = new TreeScope(draft, element, next());
    PlantingWords.species(tree, kind, null, null);
    return tree;
  }

  public <T> void give(FactKey<T> key, T value) {
    given.add(new Given<>(key, value));
  }

  /** Day of planting, as the work would date it. */
  public void plantedOn(String plant, String date) {
    give(YardFacts.PLANTING_DAYS, new PlantingDay(plant, "", LocalDate.parse(date)));
  }

  public void frost(String last, String first) {
    give(
        YardFacts.FROST,
        new FrostDates(
            Derived.given(MonthDay.parse("--" + last), "last frost", SourceRef.NONE),
            Derived.given(MonthDay.parse("--" + first), "first frost", SourceRef.NONE),
            Temperature.fahrenheit(32)));
  }

  /** Normals with these twelve means and days so many degrees warmer. */
  public void climate(double warmerDaysC, double... meansC) {
    List<ClimateNormals.Month> months =
        IntStream.range(0, 12)
            .mapToObj(
                m ->
                    new ClimateNormals.Month(
                        Length.inches(2),
                        Temperature.celsius(meansC[m]),
                        Optional.of(Temperature.celsius(meansC[m] + warmerDaysC)),
                        Optional.of(Temperature.celsius(meansC[m] - warmerDaysC))))
            .toList();
    give(
        YardFacts.CLIMATE,
        new ClimateNormals("here", months, Source.plan("test"), Source.plan("test")));
  }

  public Outcome outcome() {
    Set<FactKey<?>> keys =
        given.stream().map(Given::key).collect(Collectors.toCollection(HashSet::new));
    Giver giver = new Giver(keys, (plan, out) -> given.forEach(g -> g.to(out)));
    return new Study(PluginLoader.of(List.of(new PlantingPlugin(), giver))).of(draft.freeze());
  }

  public static Table table(Outcome outcome, String id) {
    return outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  /** The rows of a table as they are printed, cells parted by bars. */
  public List<String> printed(String id) {
    return printed(table(outcome(), id));
  }

  public List<String> printed(Table table) {
    TableFormat format = new TableFormat(draft.freeze().info().units(), "USD");
    return table.rows().stream()
        .map(
            row ->
                IntStream.range(0, row.size())
                    .mapToObj(i -> format.text(table.columns().get(i), row.get(i)))
                    .collect(Collectors.joining(" | "))
                    .replace('\u00a0', ' '))
        .toList();
  }

  public List<Finding> found(String rule) {
    return outcome().findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** The marks of one layer. */
  public List<Mark> marks(String layer) {
    return outcome().layers().get(layer).marks();
  }
}
