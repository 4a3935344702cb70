package yardloom.water;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.lot.LotWords;
import yardloom.water.tank.TankScope;
import yardloom.water.tank.TankWords;

/** A metric yard with a metal roof of 100 m² called main and a bed called greens. */
public final class RoofYard {
  private static final SourceRef HERE = new SourceRef("tank.groovy", 3, 1);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "USD"));
  private final Set<FactKey<?>> keys = new HashSet<>();
  private final List<Consumer<Sink>> given = new ArrayList<>();

  public RoofYard() {
    Shape roof = box(0, 0, 20, 5);
    draft.add(
        new ElementId(ElementKind.ROOF, "main"), HERE, c -> new Element.Roof(c, roof, "metal"));
    Shape bed = box(0, 20, 4, 3);
    draft.add(
        new ElementId(ElementKind.BED, "greens"),
        HERE,
        c -> new Element.Bed(c, bed, Element.BedUse.ANNUAL));
  }

  public static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth));
  }

  public PlanScope plan() {
    return new PlanScope(draft, HERE);
  }

  /** A fact that another plugin would give. */
  public <T> RoofYard give(FactKey<T> key, T fact) {
    keys.add(key);
    given.add(out -> out.give(key, fact));
    return this;
  }

  public RoofYard tank(String name, double xM, String roof, Consumer<TankScope> block) {
    TankWords.tank(plan(), name, Point.metres(xM, 10), roof, null, block);
    return this;
  }

  public RoofYard house(Shape shape) {
    draft.add(
        new ElementId(ElementKind.BUILDING, "house"),
        HERE,
        c ->
            new Element.Building(
                c,
                shape,
                Length.metres(3),
                Length.metres(5),
                Length.metres(0.3),
                Element.RoofForm.GABLE,
                false));
    return this;
  }

  /** A lot from (−5, −5) to 40 m up the plan that ends at some metres from the left. */
  public RoofYard lot(double rightM) {
    LotWords.lot(
        plan(),
        List.of(
            Point.metres(-5, -5),
            Point.metres(rightM, -5),
            Point.metres(rightM, 40),
            Point.metres(-5, 40)),
        null);
    return this;
  }

  public Outcome outcome() {
    return new Study(
            PluginLoader.of(
                List.of(
                    new WaterPlugin(),
                    new Giver(keys, (plan, out) -> given.forEach(g -> g.accept(out))))))
        .of(draft.freeze());
  }

  /** What is found by one rule. */
  public List<String> said(String rule) {
    return outcome().findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(Finding::text)
        .toList();
  }

  public static Table table(Outcome outcome, String id) {
    return outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  /** The rows as they are printed, cells parted by bars, thousands by plain spaces. */
  public static List<String> printed(Table table) {
    TableFormat format = new TableFormat(UnitSystem.METRIC, "USD");
    return table.rows().stream()
        .map(
            row ->
                IntStream.range(0, row.size())
                    .mapToObj(i -> format.text(table.columns().get(i), row.get(i)))
                    .collect(Collectors.joining(" | "))
                    .replaceAll("[\\u00a0\\u202f]", " "))
        .toList();
  }
}
