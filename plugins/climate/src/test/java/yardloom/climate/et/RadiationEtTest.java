package yardloom.climate.et;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;

class RadiationEtTest {
  /**
   * FAO-56 example 20, Lyon in July with wind and humidity unknown: 22.29 MJ of radiation give 4.56
   * mm (from memory); Hargreaves gives 5.0 for the same days (read).
   */
  @Test
  void lyonInJuly_equalsWorkedExample() {
    double clear = (0.75 + 2e-5 * 200) * 40.55;
    double found = RadiationEt.mmPerDay(26.6, 14.8, 22.29, clear, 0, 200);
    assertEquals(4.56, found, 0.03);
    assertTrue(found < 4.95, "nearer to Penman-Monteith than to Hargreaves");
  }

  private static Derived<Length> july(double solarMj) {
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          new ClimateNormals.Month(
              Length.millimetres(50),
              Temperature.celsius(20.7),
              Optional.of(Temperature.celsius(26.6)),
              Optional.of(Temperature.celsius(14.8))));
    }
    Source test = Source.plan("test");
    Site site =
        new Site(
            "Lyon",
            Angle.degrees(45.72),
            Angle.degrees(4.8),
            Length.metres(200),
            java.time.ZoneId.of("Europe/Paris"),
            Angle.ZERO);
    SolarRadiation radiation =
        new SolarRadiation(
            Collections.nCopies(12, 40.55),
            Collections.nCopies(12, 30.6),
            "test",
            Collections.nCopies(12, new SolarRadiation.Sky(4.92, 101.3, 20)),
            test,
            Optional.of(new SolarRadiation.Given(Collections.nCopies(12, solarMj), test)));
    return RadiationEt.of(site, new ClimateNormals("Lyon", months, test, test), radiation, 6);
  }

  @Test
  void monthOfEvenWeather_isThatManyDays() {
    assertEquals(31 * 4.56, july(22.29).value().millimetres(), 31 * 0.03);
    assertTrue(
        july(22.29).inputs().stream().anyMatch(i -> i.name().startsWith("radiation, MJ")),
        "the radiation is a stated input");
  }

  @Test
  void moreRadiation_neverMeansLessNeed() {
    double before = 0;
    for (double solar = 5; solar <= 30; solar += 1) {
      double now = july(solar).value().millimetres();
      assertTrue(now >= before, "at " + solar);
      before = now;
    }
  }
}
