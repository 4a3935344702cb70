package yardloom.program.export;

import java.awt.Shape;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * One face of the font inside the program: its glyph outlines and widths, without AWT fonts. Read
 * once for all sheets; may be shared by threads.
 */
final class ShippedFont {
  /** The name in our drawings. */
  static final String FAMILY = "Noto Sans";

  private static final Map<Boolean, ShippedFont> BY_BOLD = new HashMap<>();

  private final TrueTypeFont font;
  private final Map<Integer, GeneralPath> outlines = new HashMap<>();
  private final CmapLookup glyphs;

  private ShippedFont(TrueTypeFont font) throws IOException {
    this.font = font;
    this.glyphs = font.getUnicodeCmapLookup();
  }

  static URL file(boolean bold) {
    return ShippedFont.class.getResource(
        bold ? "fonts/NotoSans-Bold.ttf" : "fonts/NotoSans-Regular.ttf");
  }

  static synchronized ShippedFont load(boolean bold) throws IOException {
    ShippedFont known = BY_BOLD.get(bold);
    if (known == null) {
      known = read(bold);
      BY_BOLD.put(bold, known);
    }
    return known;
  }

  private static ShippedFont read(boolean bold) throws IOException {
    try (InputStream in = file(bold).openStream()) {
      return new ShippedFont(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    }
  }

  /** Whether the font has a picture of the character. */
  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** The advance in thousandths of the letter size. */
  synchronized int perMille(int codePoint) throws IOException {
    int advance = font.getAdvanceWidth(glyphs.getGlyphId(codePoint));
    return Math.round(advance * 1000f / font.getUnitsPerEm());
  }

  /** The outline in font units, y up; empty for spaces. */
  synchronized Shape outline(int codePoint) throws IOException {
    GeneralPath known = outlines.get(codePoint);
    if (known == null) {
      GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(codePoint));
      known = glyph == null ? new GeneralPath() : glyph.getPath();
      outlines.put(codePoint, known);
    }
    return known;
  }

  double unitsPerEm() throws IOException {
    return font.getUnitsPerEm();
  }
}
