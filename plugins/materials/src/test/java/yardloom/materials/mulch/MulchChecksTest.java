package yardloom.materials.mulch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BorneDepth;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.MaterialsPlugin;

/** Chips by what plants bear and soil drains, worked by hand. Usual are 10 in. */
class MulchChecksTest {
  private static final Source SAYS = Source.commonPractice("told by the test");

  private final PlanKit kit = PlanKit.us();
  private final BedScope bed = kit.bed("berries", BedUse.PERENNIAL, PlanKit.box(0, 0, 50, 20));

  private Outcome borne(Map<String, Double> inches) {
    return outcome(
        sink ->
            inches.forEach(
                (plant, depth) ->
                    sink.give(
                        YardFacts.BORNE_DEPTHS,
                        new BorneDepth(
                            new ElementId(ElementKind.BED, "berries"),
                            plant,
                            Length.inches(depth),
                            SAYS))),
        Set.of(YardFacts.BORNE_DEPTHS));
  }

  private Outcome soil(boolean heavy) {
    SoilProfile profile =
        new SoilProfile(
            "clay",
            heavy,
            Length.feet(2),
            Derived.by("told", SAYS).gives(0.16),
            Derived.by("told", SAYS).gives(Length.inches(3)),
            Optional.empty());
    return outcome(sink -> sink.give(YardFacts.SOIL, profile), Set.of(YardFacts.SOIL));
  }

  private Outcome outcome(
      java.util.function.Consumer<Sink> given, Set<yardloom.kernel.fact.FactKey<?>> keys) {
    return new Study(
            PluginLoader.of(
                List.of(new MaterialsPlugin(), new Giver(keys, (plan, out) -> given.accept(out)))))
        .of(kit.draft.freeze());
  }

  private static List<Finding> said(Outcome outcome, String rule) {
    return outcome.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  private static double chipsCubicYards(Outcome outcome) {
    return outcome.results().all(YardFacts.BILL).stream()
        .filter(l -> l.item().equals("wood-chip mulch"))
        .map(BillLine::exact)
        .mapToDouble(e -> ((Volume) e.value()).cubicYards())
        .sum();
  }

  /** The more delicate of two bears 2 in: 1000 sq ft × 2 / 324 = 6.173 cu yd, for 30.864. */
  @Test
  void delicatePlants_haveFewerChips_andTheHouseholdIsTold() {
    Outcome outcome = borne(Map.of("strawberry", 2.0, "currant", 3.0));
    assertEquals(2000 / 324.0, chipsCubicYards(outcome), 1e-6);
    List<Finding> said = said(outcome, "materials.borne-depth");
    assertEquals(1, said.size());
    assertEquals(Severity.NOTE, said.get(0).severity());
    assertTrue(said.get(0).text().contains("(strawberry, 2 in (5.1 cm))"), said.get(0).text());
  }

  /** Plants that bear just what is usual, or more, change nothing. */
  @Test
  void sturdyPlants_haveTheUsualDepth() {
    for (double depth : new double[] {10, 14}) {
      Outcome outcome = borne(Map.of("hazel", depth));
      assertEquals(10_000 / 324.0, chipsCubicYards(outcome), 1e-6);
      assertEquals(List.of(), said(outcome, "materials.borne-depth"));
    }
  }

  /** What the plan says goes first, with a warning where it is more than the plants bear. */
  @Test
  void depthOfThePlan_goesFirst_andIsWarnedOf() {
    MulchWords.mulch(bed, Length.inches(8));
    Outcome outcome = borne(Map.of("strawberry", 2.0));
    assertEquals(8000 / 324.0, chipsCubicYards(outcome), 1e-6);
    Finding said = said(outcome, "materials.borne-depth").get(0);
    assertEquals(Severity.WARNING, said.severity());
    assertEquals(
        "Chips lie 8 in (20.3 cm) deep on strawberry, which bears 2 in (5.1 cm).", said.text());
    assertEquals(List.of(), said(borne(Map.of("hazel", 8.0)), "materials.borne-depth"));
  }

  /** Iowa State University: at most 3 in over roots in heavy soil; the usual ring has 4. */
  @Test
  void ringsOnHeavySoil_areTooDeep_butNotOnLight_andNotWithoutTrees() {
    assertEquals(List.of(), said(soil(true), "materials.heavy-soil-depth"));
    kit.tree("apple", 25, 10, 12);
    assertEquals(
        "Chips lie 4 in (10.2 cm) deep over tree roots in heavy soil.",
        said(soil(true), "materials.heavy-soil-depth").get(0).text());
    assertEquals(List.of(), said(soil(false), "materials.heavy-soil-depth"));
    MulchWords.sheetMulch(
        kit.words(),
        m -> MulchWords.chips(m, null, null, null, null, Length.inches(3), null, null, null));
    assertEquals(List.of(), said(soil(true), "materials.heavy-soil-depth"));
  }

  /** 30.864 cu yd laid and a quarter lost: 7.716, then half as much each year. */
  @Test
  void topUps_ofEachYear_arePrinted() {
    MulchWords.sheetMulch(
        kit.words(), m -> MulchWords.chips(m, null, null, null, null, null, null, null, 0.25));
    Outcome outcome = borne(Map.of());
    List<Double> added =
        outcome.results().all(YardFacts.TOP_UPS).stream()
            .map(t -> t.add().value().cubicYards())
            .toList();
    double laid = 10_000 / 324.0;
    assertEquals(3, added.size(), "three years are planned for");
    assertEquals(laid / 4, added.get(0), 1e-6);
    assertEquals(laid / 8, added.get(1), 1e-6);
    assertEquals(laid / 16, added.get(2), 1e-6);
  }

  /** Walls keep 2 ft of their 50, trunks a foot beyond their half foot: 48 × 20 − π × 1.5². */
  @Test
  void gaps_areAsWideAsThePlanSays() {
    kit.house(PlanKit.box(-20, 0, 20, 20));
    kit.tree("apple", 30, 10, 12);
    MulchWords.sheetMulch(kit.words(), m -> MulchWords.gaps(m, Length.feet(1), Length.feet(2)));
    double bare =
        1000
            - outcome(s -> {}, Set.of()).results().all(YardFacts.SURFACES).stream()
                .mapToDouble(s -> s.area().value().squareFeet())
                .sum();
    assertEquals(2 * 20 + Math.PI * 1.5 * 1.5, bare, 0.1);
  }
}
