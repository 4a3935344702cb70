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

  private static List<List<String>> names(Load... beds) {
    return Zoning.zones(List.of(beds), LIMIT).stream()
        .map(zone -> zone.stream().map(Load::name).toList())
        .toList();
  }

  /** 60 and 40 fill the limit of 100, 60 and 40.1 do not; 7 hours are 0.7 of 10, 6.99 are not. */
  @Test
  void limits_areWithin() {
    assertEquals(List.of(List.of("a", "b")), names(new Load("a", 60, 1), new Load("b", 40, 1)));
    assertEquals(2, names(new Load("a", 60, 1), new Load("b", 40.1, 1)).size());
    assertEquals(List.of(List.of("a", "b")), names(new Load("a", 1, 10), new Load("b", 1, 7)));
    assertEquals(2, names(new Load("a", 1, 10), new Load("b", 1, 6.99)).size());
  }

  /** Shade dries later than sun: of like need and little flow, apart all the same. */
  @Test
  void sunAndShade_areApart() {
    assertEquals(
        List.of(List.of("a", "c"), List.of("b")),
        names(
            new Load("a", 1, 5, "sun"), new Load("b", 1, 5, "shade"), new Load("c", 1, 5, "sun")));
  }

  /** First fit by falling flow: 80 takes 20 with it, 70 takes 30; alike, by name. */
  @Test
  void largestFlows_comeFirst_thenNames() {
    assertEquals(
        List.of(List.of("b", "d"), List.of("c", "a")),
        names(
            new Load("a", 30, 5),
            new Load("b", 80, 5),
            new Load("c", 70, 5),
            new Load("d", 20, 5)));
    assertEquals(
        List.of(List.of("bed 2", "bed 10")),
        names(new Load("bed 10", 30, 5 + 1e-9), new Load("bed 2", 30 - 1e-9, 5)));
  }
}
