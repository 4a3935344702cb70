package yardloom.water.drip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.SoilProfile;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;

/** The width that one outlet wets against two published tables, each read in its maker's manual. */
class WettedGroundTest {
  private static final List<DataRow> PUBLISHED =
      DataTable.shipped(WettedGroundTest.class, "published-wetted-widths.csv").rows();
  private static final List<String> FINER = List.of("sandy loam", "loam", "clay loam");

  /** One texture for each class of the tables. */
  private static final Map<String, String> OF_CLASS =
      Map.of("coarse", "sandy loam", "medium", "loam", "fine", "clay loam");

  private static double feet(String texture, double gph) {
    return WettedGround.width(Optional.of(soil(texture)), Flow.gallonsPerHour(gph)).value().feet();
  }

  private static SoilProfile soil(String texture) {
    Source says = Source.commonPractice("told by the test");
    return new SoilProfile(
        texture,
        false,
        Length.metres(0.5),
        Derived.by("told", says).gives(0.15),
        Derived.by("told", says).gives(Length.millimetres(75)),
        Optional.empty());
  }

  /**
   * Low end of the general range up to half a gallon an hour, its middle at one, its end from two.
   */
  @Test
  void width_runsThroughThePublishedRange() {
    PUBLISHED.stream()
        .filter(r -> r.text("flow_gph").isEmpty())
        .forEach(
            r -> {
              String texture = OF_CLASS.get(r.text("soil"));
              double low = r.number("low_ft");
              double high = r.number("high_ft");
              assertEquals(low, feet(texture, 0.3), 1e-9, texture);
              assertEquals(low, feet(texture, 0.5), 1e-9, texture);
              assertEquals((low + high) / 2, feet(texture, 1), 1e-9, texture);
              assertEquals(high, feet(texture, 2), 1e-9, texture);
              assertEquals(high, feet(texture, 4), 1e-9, texture);
            });
  }

  /**
   * By hand: 0.6 gph in loam, a fifth of the way from 2 to 3 ft; 1.5 in clay loam, half of 4.5 to
   * 6.
   */
  @Test
  void width_betweenFlows_isStraight() {
    assertEquals(2.2, feet("loam", 0.6), 1e-9);
    assertEquals(5.25, feet("clay loam", 1.5), 1e-9);
  }

  /** The cautious side: never wider than the low end of the second maker's table at that flow. */
  @Test
  void width_isBelowTheTableByFlow() {
    long rows =
        PUBLISHED.stream()
            .filter(r -> !r.text("flow_gph").isEmpty())
            .peek(
                r -> {
                  double ours = feet(OF_CLASS.get(r.text("soil")), r.number("flow_gph"));
                  assertTrue(ours <= r.number("low_ft"), r.text("soil") + " " + ours);
                  assertTrue(ours >= r.number("low_ft") / 2.01, "nor under half: " + ours);
                })
            .count();
    assertEquals(9, rows);
  }

  /** More flow and finer soil never wet less. */
  @Property
  void width_growsWithFlowAndFineness(
      @ForAll @DoubleRange(min = 0.1, max = 5) double gph,
      @ForAll @DoubleRange(min = 0, max = 3) double more) {
    double last = 0;
    for (String texture : FINER) {
      double here = feet(texture, gph);
      assertTrue(here > last, texture);
      assertTrue(feet(texture, gph + more) >= here, texture);
      last = here;
    }
  }
}
