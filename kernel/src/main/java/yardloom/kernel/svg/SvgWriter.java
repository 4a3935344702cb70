package yardloom.kernel.svg;

import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.sheet.Box;
import yardloom.kernel.sheet.ComposedSheet;
import yardloom.kernel.sheet.Ink;
import yardloom.kernel.sheet.Paper;
import yardloom.kernel.sheet.Xy;

/**
 * Writes a sheet as SVG 1.1: the view box is the paper in millimetres, so a line of width 0.25 is
 * 0.25 mm wide when printed at full size.
 *
 * <p>Only what all viewers know: no document type, no external references, no style sheet, {@code
 * title} first in its parent, coordinates with two decimals, attributes in a fixed order. Bytes
 * depend on nothing but the sheet. All ids begin with the sheet's id, so that several sheets can
 * stand in one page.
 *
 * <p>References: [1] Scalable Vector Graphics (SVG) 1.1 (Second Edition), W3C, 2011.
 */
public final class SvgWriter {
  /** The shipped font first, then the fonts of other machines. */
  public static final String FONTS = "Noto Sans, Open Sans, Arial, Helvetica, sans-serif";

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final double HALO_MM = 0.7;

  private final XMLStreamWriter xml;
  private final String prefix;
  private final Map<String, Integer> used = new HashMap<>();
  private final Map<Box, String> clips = new HashMap<>();

  private SvgWriter(XMLStreamWriter xml, String prefix) {
    this.xml = xml;
    this.prefix = prefix;
  }

  /** Writes the sheet in UTF-8 with an XML declaration; the stream stays open. */
  public static void write(ComposedSheet sheet, OutputStream out) {
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeCharacters("\n");
      new SvgWriter(xml, sheet.id()).root(sheet);
      xml.writeCharacters("\n");
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new java.io.UncheckedIOException(new java.io.IOException(e));
    }
  }

  private void root(ComposedSheet sheet) throws XMLStreamException {
    Paper paper = sheet.paper();
    String width = number(paper.widthMm());
    String height = number(paper.heightMm());
    xml.setDefaultNamespace(SVG);
    xml.writeStartElement(SVG, "svg");
    xml.writeDefaultNamespace(SVG);
    attributes(
        "version", "1.1",
        "width", width + "mm",
        "height", height + "mm",
        "viewBox", "0 0 " + width + " " + height,
        "font-family", FONTS);
    element("title", sheet.title());
    element("desc", sheet.description());
    definitions(sheet);
    empty("rect", "width", width, "height", height, "fill", Palette.PAPER);
    for (Ink ink : sheet.inks()) {
      write(ink);
    }
    xml.writeCharacters("\n");
    xml.writeEndElement();
  }

  private void definitions(ComposedSheet sheet) throws XMLStreamException {
    SortedMap<String, Style> patterns = new TreeMap<>();
    Definitions found = new Definitions(patterns, new java.util.LinkedHashSet<>());
    sheet.inks().forEach(found::collect);
    if (patterns.isEmpty() && found.clips().isEmpty()) {
      return;
    }
    start("defs");
    for (Map.Entry<String, Style> pattern : patterns.entrySet()) {
      HatchTile tile = HatchTile.of(pattern.getValue().hatch());
      start(
          "pattern",
          "id",
          prefix + "-" + pattern.getKey(),
          "patternUnits",
          "userSpaceOnUse",
          "width",
          number(tile.widthMm()),
          "height",
          number(tile.heightMm()));
      String colour = Definitions.colour(pattern.getValue());
      if (tile.filled()) {
        empty("path", "d", tile.path(), "fill", colour);
      } else {
        empty(
            "path",
            "d",
            tile.path(),
            "fill",
            "none",
            "stroke",
            colour,
            "stroke-width",
            number(tile.lineMm()));
      }
      end();
    }
    for (Box box : found.clips()) {
      String id = id("clip");
      clips.put(box, id);
      start("clipPath", "id", id);
      empty(
          "rect",
          "x",
          number(box.x()),
          "y",
          number(box.y()),
          "width",
          number(box.width()),
          "height",
          number(box.height()));
      end();
    }
    end();
  }

  private void write(Ink ink) throws XMLStreamException {
    if (ink instanceof Ink.Group group) {
      group(group);
    } else if (ink instanceof Ink.Path path) {
      path(path);
    } else if (ink instanceof Ink.Circle circle) {
      shape(
          circle.style(),
          "circle",
          "cx",
          number(circle.centre().x()),
          "cy",
          number(circle.centre().y()),
          "r",
          number(circle.radiusMm()));
    } else if (ink instanceof Ink.Text text) {
      text(text);
    }
  }

  private void group(Ink.Group group) throws XMLStreamException {
    if (group.inks().isEmpty()) {
      return;
    }
    start("g");
    if (!group.name().isEmpty()) {
      attributes("id", id(group.name()));
    }
    Optional<Box> clip = group.clip();
    if (clip.isPresent()) {
      attributes("clip-path", "url(#" + clips.get(clip.get()) + ")");
    }
    if (!group.title().isEmpty()) {
      element("title", group.title());
    }
    for (Ink member : group.inks()) {
      write(member);
    }
    end();
  }

  private String id(String name) {
    String wanted = prefix + "-" + name;
    int count = used.merge(wanted, 1, Integer::sum);
    return count == 1 ? wanted : wanted + "-" + count;
  }

  private void path(Ink.Path path) throws XMLStreamException {
    StringBuilder d = new StringBuilder();
    for (Ink.Track track : path.tracks()) {
      List<Xy> points = track.points();
      for (int i = 0; i < points.size(); i++) {
        d.append(i == 0 ? "M" : i == 1 ? "L" : " ")
            .append(number(points.get(i).x()))
            .append(' ')
            .append(number(points.get(i).y()));
      }
      d.append(track.closed() ? "Z" : "");
    }
    shape(path.style(), "path", "d", d.toString());
  }

  /** The shape in its fill and line, and once more in its hatch. */
  private void shape(Style style, String name, String... geometry) throws XMLStreamException {
    boolean hatched = style.hatch() != Hatch.NONE;
    if (!hatched || !style.fill().isEmpty()) {
      start(name, geometry);
      attributes("class", style.name(), "fill", style.fill().isEmpty() ? "none" : style.fill());
      if (!hatched) {
        stroke(style);
      }
      finishEmpty();
    }
    if (hatched) {
      start(name, geometry);
      attributes(
          "class", style.name(), "fill", "url(#" + prefix + "-" + Definitions.key(style) + ")");
      stroke(style);
      finishEmpty();
    }
  }

  private void stroke(Style style) throws XMLStreamException {
    if (name(style).isEmpty()) {
      return;
    }
    attributes("stroke", style.stroke(), "stroke-width", number(style.strokeMm()));
    if (!style.dash().isEmpty()) {
      attributes("stroke-dasharray", style.dash());
    }
    attributes("stroke-linejoin", "round");
  }

  private static String name(Style style) {
    return style.strokeMm() > 0 ? style.stroke() : "";
  }

  private void text(Ink.Text text) throws XMLStreamException {
    if (text.content().isBlank()) {
      return;
    }
    if (text.halo()) {
      // Viewers of SVG 1.1 paint the fill first; a stroked copy underneath makes the white edge.
      glyphs(
          text,
          "fill",
          "none",
          "stroke",
          Palette.PAPER,
          "stroke-width",
          number(HALO_MM),
          "stroke-linejoin",
          "round");
    }
    glyphs(text, "fill", text.colour());
  }

  private void glyphs(Ink.Text text, String... paint) throws XMLStreamException {
    String x = number(text.at().x());
    String y = number(text.at().y());
    start("text", "x", x, "y", y, "font-size", number(text.emMm()));
    if (text.bold()) {
      attributes("font-weight", "bold");
    }
    switch (text.align()) {
      case MIDDLE -> attributes("text-anchor", "middle");
      case END -> attributes("text-anchor", "end");
      case START -> {
        // The default.
      }
    }
    if (text.turnDegrees() != 0) {
      attributes("transform", "rotate(" + number(text.turnDegrees()) + " " + x + " " + y + ")");
    }
    attributes(paint);
    xml.writeCharacters(printable(text.content()));
    xml.writeEndElement();
  }

  /** Characters that XML cannot hold become a replacement sign. */
  private static String printable(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              boolean allowed =
                  c == '\t'
                      || c >= 0x20 && c < 0xd800
                      || c >= 0xe000 && c <= 0xfffd
                      || c >= 0x10000;
              kept.appendCodePoint(allowed ? c : 0xfffd);
            });
    return kept.toString();
  }

  private void start(String name, String... attributes) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement(SVG, name);
    attributes(attributes);
  }

  private void end() throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeEndElement();
  }

  private void finishEmpty() throws XMLStreamException {
    xml.writeEndElement();
  }

  private void empty(String name, String... attributes) throws XMLStreamException {
    start(name, attributes);
    xml.writeEndElement();
  }

  private void element(String name, String text) throws XMLStreamException {
    start(name);
    xml.writeCharacters(printable(text));
    xml.writeEndElement();
  }

  private void attributes(String... pairs) throws XMLStreamException {
    for (int i = 0; i < pairs.length; i += 2) {
      xml.writeAttribute(pairs[i], pairs[i + 1]);
    }
  }

  /** Two decimals at most, no trailing zeros, no negative zero. */
  static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
