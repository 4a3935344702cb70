package yardloom.sheet.font;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.draw.TextMetrics;

/**
 * Text widths from a table of the shipped font's advances; no font of the machine is asked.
 *
 * <p>Widths are sums of advances without kerning. A character that the table does not list counts
 * as {@link #UNKNOWN_PER_MILLE} of the letter size, wider than nearly all letters, so that boxes
 * come out too large rather than too small.
 *
 * <p>References: [1] Noto Sans, The Noto Project Authors, 2022, horizontal metrics (hmtx) and
 * character map (cmap) of the faces Regular and Bold.
 */
public final class FontWidths implements TextMetrics {
  /** Height of capital letters in thousandths of the letter size: OS/2 capHeight of the font. */
  public static final int CAP_HEIGHT_PER_MILLE = 714;

  /** Advance assumed for characters without an entry. */
  public static final int UNKNOWN_PER_MILLE = 1000;

  private static final String TABLE = "noto-sans-widths.csv";

  private record Advance(int regular, int bold) {}

  /** By code point: layout asks for widths many thousand times a sheet. */
  private final Advance[] advances;

  private FontWidths(SortedMap<Integer, Advance> listed) {
    advances = new Advance[listed.lastKey() + 1];
    listed.forEach((codePoint, advance) -> advances[codePoint] = advance);
  }

  /** Read when first asked for. */
  private static final class Shipped {
    private static final FontWidths WIDTHS = read();
  }

  /** The widths of the shipped font. */
  public static FontWidths shipped() {
    return Shipped.WIDTHS;
  }

  private static FontWidths read() {
    SortedMap<Integer, Advance> advances = new TreeMap<>();
    try (InputStream in = FontWidths.class.getResourceAsStream(TABLE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
      lines.readLine();
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] cells = line.split(",");
        advances.put(
            Integer.parseInt(cells[0], 16),
            new Advance(Integer.parseInt(cells[1]), Integer.parseInt(cells[2])));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the font widths inside the program cannot be read", e);
    }
    return new FontWidths(advances);
  }

  @Override
  public double widthMm(String text, double emMm, boolean bold) {
    long perMille = 0;
    for (int i = 0; i < text.length(); ) {
      int codePoint = text.codePointAt(i);
      Advance advance = advance(codePoint);
      perMille += advance == null ? UNKNOWN_PER_MILLE : bold ? advance.bold() : advance.regular();
      i += Character.charCount(codePoint);
    }
    return perMille * emMm / 1000;
  }

  private Advance advance(int codePoint) {
    return codePoint < advances.length ? advances[codePoint] : null;
  }

  /** Whether the table lists the character. */
  public boolean knows(int codePoint) {
    return advance(codePoint) != null;
  }
}
