package yardloom.sheet.svg;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import yardloom.sheet.compose.ComposedSheet;

/** A sheet and its drawing as SVG, written once for all files that show it. */
public final class SvgSheet {
  private final ComposedSheet sheet;
  private final byte[] svg;

  private SvgSheet(ComposedSheet sheet, byte[] svg) {
    this.sheet = sheet;
    this.svg = svg;
  }

  public static SvgSheet of(ComposedSheet sheet) {
    return of(sheet, new ArcMemory());
  }

  /** The same with what was found out of other sheets. */
  public static SvgSheet of(ComposedSheet sheet, ArcMemory arcs) {
    Bytes out = new Bytes();
    SvgWriter.write(sheet, out, arcs);
    return new SvgSheet(sheet, out.written());
  }

  /** Takes the single bytes in which XML is written, without a lock for each. */
  private static final class Bytes extends OutputStream {
    private byte[] bytes = new byte[1 << 17];
    private int count;

    @Override
    public void write(int b) {
      if (count == bytes.length) {
        bytes = Arrays.copyOf(bytes, 2 * count);
      }
      bytes[count++] = (byte) b;
    }

    byte[] written() {
      return Arrays.copyOf(bytes, count);
    }
  }

  public ComposedSheet sheet() {
    return sheet;
  }

  /** Writes the whole file, in UTF-8; the stream stays open. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(svg);
  }

  /** The whole file, for a reader. */
  public InputStream open() {
    return new ByteArrayInputStream(svg);
  }

  /** The drawing without the XML declaration, which may not stand inside a page. */
  public String element() {
    String text = new String(svg, StandardCharsets.UTF_8);
    return text.substring(text.indexOf("<svg"));
  }
}
