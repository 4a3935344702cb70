package yardloom.sheet.svg;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
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
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(sheet, out);
    return new SvgSheet(sheet, out.toByteArray());
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
