package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;

/**
 * The yard in its first and fifth year on the planting sheet: woody plants have 0.3 and 0.8 of
 * their size then (the rule of the table of growth).
 */
class YoungViewByHandTest {
  private static final Drawn YARD =
      Drawn.of(
          """
          plan 'Young', units: 'us', date: '2027-03-30'
          lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
          ownPlant('bush', like: 'red currant', source: publication('x', by: 'y', seen: 'read')) { grown spacing: 2.ft, rows: 5.ft, spread: 4.ft, height: 6.ft }
          bed('dense', rect(4.ft, 4.ft, 20.ft, 10.ft), use: 'perennial') {
            plant 'bush', spacing: 2.ft, rowSpacing: 2.5.ft
            plantThinned 'bush', to: 4.ft, season: 4
          }
          bed('old', rect(4.ft, 20.ft, 9.ft, 3.ft), use: 'perennial') { plant 'rhubarb', spacing: 3.ft, standing: true }
          tree('flat', point(40.ft, 20.ft), crown: 12.ft, height: 8.ft, standing: false) { species 'apple (dwarf)'; trained 'espalier', width: 9.ft, bearing: 30.deg }
          tree('round', point(60.ft, 20.ft), crown: 13.ft, height: 8.ft, standing: false) { species 'European pear' }
          hedge 'new', line([point(30.ft, 40.ft), point(55.ft, 40.ft)]), height: 4.ft, width: 3.ft, standing: false
          hedge 'there', line([point(30.ft, 50.ft), point(55.ft, 50.ft)]), height: 4.ft, width: 3.ft
          """);

  private static Stream<Mark> marks(String style) {
    return YARD.outcome().sheets().stream()
        .flatMap(s -> s.panels().stream())
        .filter(Panel.Figure.class::isInstance)
        .map(Panel.Figure.class::cast)
        .filter(f -> f.title().equals("In the first and the fifth year"))
        .flatMap(f -> f.marks().stream())
        .filter(m -> m.toString().contains(style));
  }

  private static Mark.Region region(String style, String about) {
    List<Mark.Region> found =
        marks(style)
            .filter(Mark.Region.class::isInstance)
            .map(Mark.Region.class::cast)
            .filter(r -> r.about().startsWith(about))
            .toList();
    assertEquals(1, found.size(), about);
    return found.get(0);
  }

  /**
   * The espalier, 9 by 2 ft grown, has 2.7 × 0.6 = 1.62 sq ft in its first year and 7.2 × 1.6 =
   * 11.52 in its fifth; the hedge of 25 by 3 ft 25 × 0.9 = 22.5 and 25 × 2.4 = 60. At 30° each side
   * of the espalier's box is 2.7 sin 30° + 0.6 cos 30° = 1.870 and 2.7 cos 30° + 0.6 sin 30° =
   * 2.638 ft in the first year.
   */
  @ParameterizedTest(name = "{0} {1}: {2} sq ft")
  @CsvSource({
    "year-1-plant, apple (dwarf), 1.62",
    "year-5-plant, apple (dwarf), 11.52",
    "year-1-plant, new, 22.5",
    "year-5-plant, new, 60",
  })
  void flatPlants_growFlat(String style, String about, double squareFeet) {
    assertEquals(squareFeet, region(style, about).shape().area().squareFeet(), 1e-6);
  }

  @Test
  void espalier_liesAlongItsWires() {
    var box = region("year-1-plant", "apple (dwarf)").shape().jts().getEnvelopeInternal();
    assertEquals(1.870, box.getWidth() / 0.3048, 1e-3);
    assertEquals(2.638, box.getHeight() / 0.3048, 1e-3);
  }

  /**
   * 10 × 4 bushes of 0.3 × 4 ft; thinned to 4 ft in season 4, each second of a row and of the rows
   * (4 / 2.5 is 1.6, rounded to 2) stay: 5 × 2 of 0.8 × 4 ft. A pear drawn 13 ft wide has 3.9 and
   * 10.4 ft. Rhubarb and hedge that stand are as they will be: three of them, once.
   */
  @Test
  void discs_areThoseOfTheirYear() {
    assertEquals("{bush 1.2=40, European pear 3.9=1, rhubarb 3.5=3}", discs("year-1-plant"));
    assertEquals("{bush 3.2=10, European pear 10.4=1}", discs("year-5-plant"));
    assertTrue(marks("year").noneMatch(m -> m.toString().contains("there")));
  }

  private static String discs(String style) {
    TreeMap<String, Integer> found = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    marks(style)
        .filter(Mark.Symbol.class::isInstance)
        .map(Mark.Symbol.class::cast)
        .forEach(
            s ->
                found.merge(
                    String.format(java.util.Locale.ROOT, "%s %.1f", s.about(), s.size().feet()),
                    1,
                    Integer::sum));
    return found.toString();
  }
}
