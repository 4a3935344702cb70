package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import yardloom.sheet.font.FontWidths;

/** The kernel's width table against the font file, as fontbox reads it. */
class FontWidthTableTest {
  private static final int LAST = 0x2fff;

  @Test
  void table_everyCharacter_isAsWideAsInTheFont() throws IOException {
    FontWidths table = FontWidths.shipped();
    ShippedFont regular = ShippedFont.load(false);
    ShippedFont bold = ShippedFont.load(true);
    int compared = 0;
    for (int code = 0; code <= LAST; code++) {
      if (table.knows(code)) {
        String text = Character.toString(code);
        assertTrue(regular.has(code) && bold.has(code), text);
        assertEquals(regular.perMille(code), Math.round(table.widthMm(text, 1000, false)), text);
        assertEquals(bold.perMille(code), Math.round(table.widthMm(text, 1000, true)), text);
        compared++;
      }
    }
    assertTrue(compared > 400, compared + " characters");
  }

  @Test
  void table_latinOfTheFont_isComplete() throws IOException {
    FontWidths table = FontWidths.shipped();
    ShippedFont regular = ShippedFont.load(false);
    for (int code = 0x20; code <= 0x17f; code++) {
      if (regular.has(code) && !Character.isISOControl(code)) {
        assertTrue(table.knows(code), Integer.toHexString(code));
      }
    }
  }
}
