package yardloom.planting.bloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.PlantYard;
import yardloom.planting.PlantingSheet;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.harvest.HarvestSeason;

/**
 * Bloom and harvest on the planting sheet: names take 36 mm, each month 5 mm, each row 5.4 mm; one
 * metre of the figure stands for 1 mm.
 */
class BloomFigureTest {
  private final PlantYard yard = PlantYard.us("2026-03-10");

  private List<Panel.Figure> figures() {
    return BloomFigure.of(yard.draft.freeze(), yard.outcome().results());
  }

  private static Envelope bar(Panel.Figure figure, String about) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Region r && r.about().equals(about))
        .map(m -> ((Mark.Region) m).shape().bounds())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> names(Panel.Figure figure) {
    return figure.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> ((Mark.Label) m).text())
        .filter(t -> t.length() > 1)
        .toList();
  }

  /**
   * Strawberries bloom from the last frost, 25 April, to 20 May and are picked from 25 May, 30 days
   * after it, to 24 June (catalogue rows, recalled): 36 + 5 × (3 + 24/30) = 55 to 36 + 5 × (4 +
   * 20/31) = 59.23; 36 + 5 × (4 + 24/31) = 59.87 to 36 + 5 × (5 + 24/30) = 65. They are the first
   * row, whose middle is 2.7 down, bloom 1 above it, picking 1 below, each 1.5 high. Tomatoes are
   * picked only.
   */
  @Test
  void bloomStandsOverPicking_onItsDays() {
    yard.frost("04-25", "10-14");
    yard.planted(yard.bed("s", 0, 0, 9, 9), "garden strawberry", 1);
    yard.planted(yard.bed("t", 20, 0, 9, 9), "tomato", 3);
    Panel.Figure figure = figures().get(0);
    assertEquals(List.of("garden strawberry", "tomato"), names(figure));
    Envelope bloom = bar(figure, "garden strawberry, in bloom");
    assertEquals(55, bloom.getMinX(), 1e-6);
    assertEquals(36 + 5 * (4 + 20 / 31.0), bloom.getMaxX(), 1e-6);
    assertEquals(-2.7 + 1 - 0.75, bloom.getMinY(), 1e-6);
    Envelope picked = bar(figure, "garden strawberry, picked");
    assertEquals(36 + 5 * (4 + 24 / 31.0), picked.getMinX(), 1e-6);
    assertEquals(65, picked.getMaxX(), 1e-6);
    assertEquals(-2.7 - 1 - 0.75, picked.getMinY(), 1e-6);
    assertTrue(bar(figure, "tomato, picked").getMaxY() < -5.4);
    assertEquals(96, figure.minWidthMm(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void chartStandsOnTheSheet_whereThereIsAYearToCountFrom(boolean frost) {
    yard.planted(yard.bed("s", 0, 0, 9, 9), "garden strawberry", 1);
    if (frost) {
      yard.frost("04-25", "10-14");
    }
    Outcome outcome = yard.outcome();
    boolean drawn =
        new PlantingSheet()
            .make(yard.draft.freeze(), outcome.results(), Offers.NONE).stream()
                .flatMap(s -> s.panels().stream())
                .filter(p -> p instanceof Panel.Figure)
                .anyMatch(p -> ((Panel.Figure) p).title().startsWith("In bloom and picked"));
    assertEquals(frost, drawn);
  }

  /** Where frost is no rule, from the first warm day: 25 days on from 18 March are 12 April. */
  @Test
  void bloomWithoutFrost_countsFromTheFirstWarmDay() {
    yard.give(
        YardFacts.WARM_SEASON,
        new WarmSeason(
            Derived.given(MonthDay.of(3, 18), "first warm day", SourceRef.NONE),
            Derived.given(MonthDay.of(11, 27), "last warm day", SourceRef.NONE),
            Temperature.fahrenheit(55)));
    yard.planted(yard.bed("s", 0, 0, 9, 9), "garden strawberry", 1);
    assertEquals(List.of("garden strawberry | 18 Mar | 12 Apr"), yard.printed("bloom"));
  }

  /** Thirty rows fit a sheet's height; what is more goes on beside them. */
  @Test
  void longCharts_goOnInPieces() {
    yard.frost("04-25", "10-14");
    List<Plant> kinds =
        PlantCatalogue.shipped().all().stream()
            .filter(p -> p.growth().form() == Plant.Form.HERB)
            .filter(p -> HarvestSeason.of(p).isPresent())
            .limit(31)
            .toList();
    for (int i = 0; i < kinds.size(); i++) {
      yard.planted(yard.bed("b" + i, 0, 40 * i, 30, 30), kinds.get(i).name(), 12);
    }
    List<Panel.Figure> figures = figures();
    assertEquals(2, figures.size());
    assertEquals(30, names(figures.get(0)).size());
    assertEquals("In bloom and picked, once grown (continued)", figures.get(1).title());
    assertEquals(1, names(figures.get(1)).size());
  }
}
