package yardloom.kernel.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;

class ColourTest {
  private static final OutsideRows CONTRAST = OutsideRows.of(ColourTest.class, "contrast.csv");

  @ParameterizedTest
  @CsvFileSource(resources = "contrast.csv", useHeadersInDisplayName = true)
  void contrast_publishedPairs_matches(
      String id, String one, String other, double ratio, double tolerance, String source) {
    CONTRAST.check(id, ratio, Contrast.ratio(one, other), tolerance);
  }

  /** K-08. */
  @Property(seed = "20261125")
  void contrast_anyPair_isSymmetricAndWithinOneTo21(
      @ForAll @IntRange(max = 0xffffff) int a, @ForAll @IntRange(max = 0xffffff) int b) {
    String one = String.format("#%06x", a);
    String other = String.format("#%06x", b);
    double ratio = Contrast.ratio(one, other);
    assertEquals(ratio, Contrast.ratio(other, one));
    assertTrue(ratio >= 1 && ratio <= 21.0000001);
  }

  @Test
  void contrast_notAColour_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Contrast.ratio("red", "#ffffff"));
  }

  /** K-15 to K-17. */
  @ParameterizedTest
  @CsvFileSource(resources = "ciede2000.csv", useHeadersInDisplayName = true)
  void difference_sharmaPairs_matches(
      int pair,
      double l1,
      double a1,
      double b1,
      double l2,
      double a2,
      double b2,
      double difference) {
    ColourDifference.Lab one = new ColourDifference.Lab(l1, a1, b1);
    ColourDifference.Lab two = new ColourDifference.Lab(l2, a2, b2);
    assertEquals(difference, ColourDifference.between(one, two), 0.00005);
    assertEquals(difference, ColourDifference.between(two, one), 0.00005);
  }

  /** K-09, K-11: computed from the published hex values; orange and yellow come nearest. */
  @Test
  void codes_nearestPair_isOrangeAndYellow() {
    double least = Double.MAX_VALUE;
    String pair = "";
    for (String a : Palette.CODES) {
      for (String b : Palette.CODES) {
        if (!a.equals(b) && ColourDifference.between(a, b) < least) {
          least = ColourDifference.between(a, b);
          pair = a + " " + b;
        }
      }
    }
    assertEquals(21.72, least, 0.05);
    assertEquals("#e69f00 #f0e442", pair);
  }

  private static List<Style> paletteStyles() throws IllegalAccessException {
    List<Style> styles = new ArrayList<>();
    for (Field field : Palette.class.getFields()) {
      if (field.getType() == Style.class) {
        styles.add((Style) field.get(null));
      }
    }
    return styles;
  }

  /** WCAG 2.2, 1.4.3: 4.5 to 1 for text. */
  @Test
  void palette_textOnEveryTint_keepsContrast() throws IllegalAccessException {
    List<String> grounds = new ArrayList<>(List.of(Palette.PAPER, Palette.SHADE));
    for (Style style : paletteStyles()) {
      // Symbols too small for text to stand on: the tap, the arrow of flowing water, the dot of a
      // point to set out.
      boolean symbol = List.of("water-point", "flow", "set-out-point").contains(style.name());
      if (!style.fill().isEmpty() && !symbol) {
        grounds.add(style.fill());
      }
    }
    for (String ground : grounds) {
      for (String text : List.of(Palette.INK, Palette.MUTED)) {
        assertTrue(Contrast.ratio(text, ground) >= 4.5, text + " on " + ground);
      }
    }
    assertTrue(Contrast.ratio(Palette.ALERT, Palette.PAPER) >= 4.5);
  }

  /** D-18: widths at or above 0.13 of the ISO 128-20 line groups. */
  @Test
  void palette_lineWidths_areOfTheSeries() throws IllegalAccessException {
    Set<Double> series = Set.of(0.0, 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);
    for (Style style : paletteStyles()) {
      assertTrue(series.contains(style.strokeMm()), style.name() + " " + style.strokeMm());
    }
  }

  @Test
  void palette_areaStyles_differWithoutColour() throws IllegalAccessException {
    Set<String> looks = new java.util.HashSet<>();
    for (Style style :
        List.of(
            Palette.BUILDING,
            Palette.STRUCTURE,
            Palette.PAVING,
            Palette.PATH,
            Palette.BED,
            Palette.KEEP_OUT)) {
      assertTrue(looks.add(style.hatch() + style.dash()), style.name());
    }
  }
}
