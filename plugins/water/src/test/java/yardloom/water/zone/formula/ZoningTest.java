package yardloom.water.zone.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import yardloom.water.zone.formula.Zoning.Load;

class ZoningTest {
  private static final double LIMIT = 100;

  @Test
  void thirstyAndSparingBeds_areApart_evenIfTheFlowWouldDo() {
    List<List<Load>> zones =
        Zoning.zones(List.of(new Load("a", 10, 1), new Load("b", 10, 5)), LIMIT);
    assertEquals(List.of("b"), zones.get(0).stream().map(Load::name).toList());
    assertEquals(2, zones.size());
  }

  @Test
  void bedAboveTheLimit_isAlone() {
    List<List<Load>> zones =
        Zoning.zones(List.of(new Load("big", 150, 1), new Load("small", 1, 1)), LIMIT);
    assertEquals(2, zones.size());
    assertThrows(IllegalArgumentException.class, () -> Zoning.zones(List.of(), 0));
  }

  @Provide
  Arbitrary<List<Load>> beds() {
    return Combinators.combine(
            Arbitraries.doubles().between(1, 120), Arbitraries.doubles().between(0, 9))
        .as((flow, hours) -> new double[] {flow, hours})
        .list()
        .ofMaxSize(12)
        .map(
            list -> {
              List<Load> loads = new ArrayList<>();
              for (double[] d : list) {
                loads.add(new Load("bed " + loads.size(), d[0], d[1]));
              }
              return loads;
            });
  }

  @Property(seed = "20261125")
  void everyBed_isInOneZone_withinFlowAndLikeNeed_inWhateverOrder(
      @ForAll("beds") List<Load> beds, @ForAll long seed) {
    List<List<Load>> zones = Zoning.zones(beds, LIMIT);
    assertEquals(beds.size(), zones.stream().mapToInt(List::size).sum());
    for (List<Load> zone : zones) {
      double flow = zone.stream().mapToDouble(Load::flow).sum();
      assertTrue(zone.size() == 1 || flow <= LIMIT * (1 + 1e-6));
      double most = zone.get(0).hours();
      assertTrue(zone.stream().allMatch(l -> l.hours() <= most && l.hours() >= 0.7 * most));
    }
    List<Load> shuffled = new ArrayList<>(beds);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(zones, Zoning.zones(shuffled, LIMIT));
  }
}
