package yardloom.planting.suit.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import yardloom.facts.FrostDates;
import yardloom.facts.SunHours;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * Light by month against the need; leaves 3 h, roots 4 h and fruit 6 h of direct sun at least
 * (Ideal amount of sunlight for your vegetables, 2017, a web page, read), hazelnuts 4 h (Cornell
 * Cooperative Extension Cayuga, 2022, read).
 */
class LightRuleTest {
  private static final ElementId BED = new ElementId(ElementKind.BED, "a");

  private static Yard yard(String lightClass, boolean frost) {
    List<TimeSpan> months =
        DoubleStream.of(1.1, 2.2, 3.3, 5.0, 5.5, 6.5, 6.0, 5.2, 4.0, 3.1, 2.0, 1.0)
            .mapToObj(TimeSpan::hours)
            .toList();
    SunHours.Place place = new SunHours.Place(months, TimeSpan.hours(5.4), lightClass);
    SunHours sun =
        new SunHours(
            Map.of(BED, place),
            place,
            "the season",
            List.of("full sun", "part sun", "shade"),
            "'own'",
            "by hand");
    Optional<FrostDates> dates =
        frost
            ? Optional.of(
                new FrostDates(
                    Derived.given(MonthDay.of(4, 25), "last", SourceRef.NONE),
                    Derived.given(MonthDay.of(10, 14), "first", SourceRef.NONE),
                    Temperature.celsius(0)))
            : Optional.empty();
    return new Yard(
        new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD")).freeze(),
        List.of(),
        Optional.of(sun),
        new Yard.Weather(Optional.empty(), Optional.empty(), Optional.empty(), dates),
        new Yard.Ground(Optional.empty(), Optional.empty()),
        Map.of(),
        Optional.empty());
  }

  private static Optional<Reason> judge(String plant, Yard yard) {
    return new LightRule()
        .judge(
            Candidate.thoughtOf(
                PlantCatalogue.shipped().plant(plant),
                BED,
                SourceRef.NONE,
                List.of(Point.metres(0, 0))),
            yard);
  }

  private static String suits(String plant, Yard yard) {
    return judge(plant, yard).map(r -> r.suits().name()).orElse("FITS");
  }

  /** April to October: (5.0 + 5.5 + 6.5 + 6.0 + 5.2 + 4.0 + 3.1) / 7 = 35.3 / 7 = 5.04 h. */
  @Test
  void beansInFiveHours_doNotFit_andAreToldTheMonthOfLeastSun() {
    Reason reason = judge("bush bean", yard("part sun", true)).orElseThrow();
    assertEquals(Suits.DOES_NOT_FIT, reason.suits());
    assertEquals(
        "asks for full sun; from April to October this place has 5.0 h of direct sun a day on the"
            + " mean, least in October with 3.1 h: part sun (scheme 'own'); it needs 6 h to bear",
        reason.text());
    assertEquals(Source.Standing.READ, reason.source().standing());
  }

  /** Without frost dates April to September: 32.2 / 6 = 5.37 h, least 4.0 h in September. */
  @Test
  void withoutFrostDates_theHalfYearIsAsked() {
    String text = judge("bush bean", yard("part sun", false)).orElseThrow().text();
    assertTrue(text.contains("from April to September this place has 5.4 h"), text);
    assertTrue(text.contains("least in September with 4.0 h"), text);
  }

  /** Kale asks for full sun and bears from 3 h on; hazelnuts ask for 4 h of whatever class. */
  @Test
  void placesBetweenNeedAndLeast_areACondition() {
    assertEquals("FITS_IF", suits("kale", yard("part sun", true)));
    assertEquals("FITS", suits("kale", yard("full sun", true)));
    assertEquals("FITS", suits("hazelnut", yard("shade", true)));
    assertEquals("FITS", suits("rhubarb", yard("part sun", true)));
    assertEquals("FITS_IF", suits("rhubarb", yard("shade", true)));
  }

  /** Ramps grow under trees: full sun is the condition there, shade is not. */
  @Test
  void plantsOfTheWoods_fitInShade() {
    assertEquals("FITS", suits("ramps", yard("shade", true)));
    assertEquals("FITS_IF", suits("ramps", yard("full sun", true)));
  }
}
