package yardloom.program.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** A plan against itself, and two plans from either side. */
class ComparisonLawTest {
  private static final PlanInfo INFO =
      new PlanInfo("a", "A", "", "", "", "", UnitSystem.METRIC, "$");
  private static final ResultGrid.Head NAME = new ResultGrid.Head("item", "Item");
  private static final ResultGrid.Head ORDER = new ResultGrid.Head("order", "Order");

  /** Few places, sizes and names, so that many things meet. */
  private static Arbitrary<Thing> thing() {
    return Combinators.combine(
            Arbitraries.of("bed", "path"),
            Arbitraries.of("a", "b", "c", "d"),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 1),
            Arbitraries.of(2, 3))
        .as(
            (kind, name, x, y, width) ->
                new Thing(
                    kind,
                    name,
                    Shape.rectangle(
                        Point.metres(5 * x, 7 * y), Length.metres(width), Length.metres(2)),
                    Optional.empty()));
  }

  @Provide
  Arbitrary<Snapshot> plans() {
    Arbitrary<List<Thing>> things = thing().list().ofMaxSize(5).uniqueElements(Thing::id);
    Arbitrary<Map<String, Integer>> orders =
        Arbitraries.maps(
                Arbitraries.of("compost", "chips", "a", "b"), Arbitraries.integers().between(1, 3))
            .ofMaxSize(4);
    return Combinators.combine(things, orders).as((t, o) -> plan(t, new TreeMap<>(o)));
  }

  private static Snapshot plan(List<Thing> things, Map<String, Integer> orders) {
    List<List<String>> naming = orders.keySet().stream().map(k -> List.of(k, "")).toList();
    List<List<String>> cells =
        orders.entrySet().stream().map(e -> List.of(e.getKey(), e.getValue() + " kg")).toList();
    ResultGrid grid = new ResultGrid("orders", "Orders", List.of(NAME, ORDER), naming, cells);
    List<Snapshot.Remark> findings =
        IntStream.range(0, things.size())
            .mapToObj(i -> new Snapshot.Remark("note", things.get(i).id(), "rule", "text"))
            .toList();
    return new Snapshot(INFO, Optional.empty(), things, List.of(grid), findings);
  }

  @Property
  void planAgainstItself_isEmpty(@ForAll("plans") Snapshot plan) {
    assertTrue(new Comparison(plan, plan).isEmpty());
  }

  private static String mirrored(ThingChange c, boolean turn) {
    Optional<Thing> from = turn ? c.now() : c.old();
    Optional<Thing> to = turn ? c.old() : c.now();
    String how =
        switch (c.how()) {
          case ADDED, REMOVED -> from.isEmpty() ? "ADDED" : "REMOVED";
          default -> c.how().name();
        };
    double sign = turn ? -1 : 1;
    return String.join(
        " ",
        how,
        from.map(Thing::id).orElse("-"),
        to.map(Thing::id).orElse("-"),
        Math.round(sign * c.east().metres() * 1000) + "",
        Math.round(sign * c.north().metres() * 1000) + "");
  }

  @Property
  void twoPlansFromEitherSide_areMirrored(
      @ForAll("plans") Snapshot one, @ForAll("plans") Snapshot other) {
    Comparison there = new Comparison(one, other);
    Comparison back = new Comparison(other, one);
    Set<String> forthThings = new TreeSet<>();
    there.things().forEach(c -> forthThings.add(mirrored(c, false)));
    Set<String> backThings = new TreeSet<>();
    back.things().forEach(c -> backThings.add(mirrored(c, true)));
    assertEquals(forthThings, backThings);
    assertEquals(there.gone(), back.come());
    assertEquals(there.come(), back.gone());
    boolean renamed = there.things().stream().anyMatch(c -> c.how() == ThingChange.How.RENAMED);
    if (!renamed) {
      Map<String, BigDecimal> forth = differences(there);
      Map<String, BigDecimal> turned = new TreeMap<>();
      differences(back).forEach((row, d) -> turned.put(row, d.negate()));
      assertEquals(forth, turned);
    }
  }

  private static Map<String, BigDecimal> differences(Comparison comparison) {
    return comparison.figures().stream()
        .collect(
            Collectors.toMap(
                FigureChange::row, f -> f.difference().orElseThrow(), (a, b) -> a, TreeMap::new));
  }
}
