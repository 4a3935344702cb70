package yardloom.work.client;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Month;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.work.phase.CareMonths;

/** A desert is not told to water in dry spells only. */
class NewPlantWaterTest {
  private static final Set<Month> ALL = EnumSet.allOf(Month.class);

  private static String later(Set<Month> dry, boolean known) {
    String all = NewPlantWater.of(new CareMonths(dry, ALL, ALL, known));
    return all.substring(all.indexOf("; ") + 2);
  }

  @Test
  void sentence_followsTheDryMonths() {
    assertEquals(
        "later all through the year: in no month does it rain as much as they need. Pull weeds.",
        later(ALL, true));
    assertEquals(
        "later from May to September, when they need more than it rains, else in dry spells. Pull"
            + " weeds.",
        later(EnumSet.range(Month.MAY, Month.SEPTEMBER), true));
    assertEquals(
        "later in May and from November to February, when they need more than it rains, else in dry"
            + " spells. Pull weeds.",
        later(
            EnumSet.of(Month.MAY, Month.NOVEMBER, Month.DECEMBER, Month.JANUARY, Month.FEBRUARY),
            true));
    assertEquals("later in dry spells only. Pull weeds.", later(Set.of(), true));
    assertEquals(
        "later whenever the soil is dry a finger deep. Pull weeds.", later(Set.of(), false));
  }
}
