package yardloom.sheet.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FontWidthsTest {
  private final FontWidths widths = FontWidths.shipped();

  @Property(seed = "20261125")
  void width_ofTextsTogether_isTheSum(@ForAll String a, @ForAll String b) {
    // Two halves of a surrogate pair would meet and become one character.
    org.junit.jupiter.api.Assumptions.assumeFalse(
        !a.isEmpty() && Character.isHighSurrogate(a.charAt(a.length() - 1)));
    double together = widths.widthMm(a + b, 3, false);
    assertEquals(
        widths.widthMm(a, 3, false) + widths.widthMm(b, 3, false), together, 1e-9 + together / 1e9);
  }

  @Test
  void width_boldAndWide_isLarger() {
    assertTrue(widths.widthMm("Bed 1", 3, true) > widths.widthMm("Bed 1", 3, false));
    assertTrue(widths.widthMm("W", 3, false) > 2 * widths.widthMm("i", 3, false));
  }

  @Test
  void table_signsThatSheetsUse_areListed() {
    "×°±–—½¼¾²³″′·€£ÄÖÜßéñ…“”’µ".codePoints().forEach(c -> assertTrue(widths.knows(c), "" + c));
    assertFalse(widths.knows(0x2264), "less-or-equal is not in the font: write it in words");
  }
}
