package yardloom.sheet.svg;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.xml.stream.XMLStreamException;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;

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

  private static final double HALO_MM = 0.7;

  private final SvgXml xml;
  private final String prefix;
  private final ArcMemory arcs;
  private final Map<String, Integer> used = new HashMap<>();
  private final Map<Box, String> clips = new HashMap<>();

  private SvgWriter(SvgXml xml, String prefix, ArcMemory arcs) {
    this.arcs = arcs;
    this.xml = xml;
    this.prefix = prefix;
  }

  /** Writes the sheet in UTF-8 with an XML declaration; the stream stays open. */
  public static void write(ComposedSheet sheet, OutputStream out) {
    write(sheet, out, new ArcMemory());
  }

  static void write(ComposedSheet sheet, OutputStream out, ArcMemory arcs) {
    try {
      SvgXml xml = new SvgXml(out);
      new SvgWriter(xml, sheet.id(), arcs).root(sheet);
      xml.finish();
    } catch (XMLStreamException e) {
      throw new UncheckedIOException(new IOException(e));
    }
  }

  /** The same as text without the XML declaration, which may not stand inside a page. */
  public static String element(ComposedSheet sheet) {
    return element(sheet, new ArcMemory());
  }

  /** The same with what was found out of other sheets. */
  public static String element(ComposedSheet sheet, ArcMemory arcs) {
    return SvgSheet.of(sheet, arcs).element();
  }

  private void root(ComposedSheet sheet) throws XMLStreamException {
    Paper paper = sheet.paper();
    String width = SvgXml.number(paper.widthMm());
    String height = SvgXml.number(paper.heightMm());
    xml.root(
        "version", "1.1",
        "width", width + "mm",
        "height", height + "mm",
        "viewBox", "0 0 " + width + " " + height,
        "font-family", FONTS);
    xml.element("title", sheet.title());
    xml.element("desc", sheet.description());
    definitions(sheet);
    xml.empty("rect", "width", width, "height", height, "fill", Palette.PAPER);
    for (Ink ink : sheet.inks()) {
      write(ink);
    }
  }

  private void definitions(ComposedSheet sheet) throws XMLStreamException {
    SortedMap<String, Style> patterns = new TreeMap<>();
    Definitions found = new Definitions(patterns, new LinkedHashSet<>());
    sheet.inks().forEach(found::collect);
    if (patterns.isEmpty() && found.clips().isEmpty()) {
      return;
    }
    xml.start("defs");
    for (Map.Entry<String, Style> pattern : patterns.entrySet()) {
      HatchTile tile = HatchTile.of(pattern.getValue().hatch());
      xml.start(
          "pattern",
          "id",
          prefix + "-" + pattern.getKey(),
          "patternUnits",
          "userSpaceOnUse",
          "width",
          SvgXml.number(tile.widthMm()),
          "height",
          SvgXml.number(tile.heightMm()));
      String colour = Definitions.colour(pattern.getValue());
      if (tile.filled()) {
        xml.empty("path", "d", tile.path(), "fill", colour);
      } else {
        xml.empty(
            "path",
            "d",
            tile.path(),
            "fill",
            "none",
            "stroke",
            colour,
            "stroke-width",
            SvgXml.number(tile.lineMm()));
      }
      xml.end();
    }
    for (Box box : found.clips()) {
      String id = id("clip");
      clips.put(box, id);
      xml.start("clipPath", "id", id);
      xml.empty(
          "rect",
          "x",
          SvgXml.number(box.x()),
          "y",
          SvgXml.number(box.y()),
          "width",
          SvgXml.number(box.width()),
          "height",
          SvgXml.number(box.height()));
      xml.end();
    }
    xml.end();
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
          SvgXml.number(circle.centre().x()),
          "cy",
          SvgXml.number(circle.centre().y()),
          "r",
          SvgXml.number(circle.radiusMm()));
    } else if (ink instanceof Ink.Text text) {
      text(text);
    }
  }

  private void group(Ink.Group group) throws XMLStreamException {
    if (group.inks().isEmpty()) {
      return;
    }
    xml.start("g");
    if (!group.name().isEmpty()) {
      xml.attributes("id", id(group.name()));
    }
    Optional<Box> clip = group.clip();
    if (clip.isPresent()) {
      xml.attributes("clip-path", "url(#" + clips.get(clip.get()) + ")");
    }
    if (!group.title().isEmpty()) {
      xml.element("title", group.title());
    }
    for (Ink member : group.inks()) {
      write(member);
    }
    xml.end();
  }

  private String id(String name) {
    String wanted = prefix + "-" + name;
    int count = used.merge(wanted, 1, Integer::sum);
    return count == 1 ? wanted : wanted + "-" + count;
  }

  private void path(Ink.Path path) throws XMLStreamException {
    StringBuilder d = new StringBuilder();
    path.tracks().forEach(track -> d.append(arcs.data(track)));
    shape(path.style(), "path", "d", d.toString());
  }

  /** The shape in its fill and line, and once more in its hatch. */
  private void shape(Style style, String name, String... geometry) throws XMLStreamException {
    boolean hatched = style.hatch() != Hatch.NONE;
    if (!hatched || !style.fill().isEmpty()) {
      xml.start(name, geometry);
      xml.attributes("class", style.name(), "fill", style.fill().isEmpty() ? "none" : style.fill());
      if (!hatched) {
        stroke(style);
      }
      xml.endLeaf();
    }
    if (hatched) {
      xml.start(name, geometry);
      xml.attributes(
          "class", style.name(), "fill", "url(#" + prefix + "-" + Definitions.key(style) + ")");
      stroke(style);
      xml.endLeaf();
    }
  }

  private void stroke(Style style) throws XMLStreamException {
    if (name(style).isEmpty()) {
      return;
    }
    xml.attributes("stroke", style.stroke(), "stroke-width", SvgXml.number(style.strokeMm()));
    if (!style.dash().isEmpty()) {
      xml.attributes("stroke-dasharray", style.dash());
    }
    xml.attributes("stroke-linejoin", "round");
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
          SvgXml.number(HALO_MM),
          "stroke-linejoin",
          "round");
    }
    glyphs(text, "fill", text.colour());
  }

  private void glyphs(Ink.Text text, String... paint) throws XMLStreamException {
    String x = SvgXml.number(text.at().x());
    String y = SvgXml.number(text.at().y());
    xml.start("text", "x", x, "y", y, "font-size", SvgXml.number(text.emMm()));
    if (text.bold()) {
      xml.attributes("font-weight", "bold");
    }
    switch (text.align()) {
      case MIDDLE -> xml.attributes("text-anchor", "middle");
      case END -> xml.attributes("text-anchor", "end");
      case START -> {
        // The default.
      }
    }
    if (text.turnDegrees() != 0) {
      xml.attributes(
          "transform", "rotate(" + SvgXml.number(text.turnDegrees()) + " " + x + " " + y + ")");
    }
    xml.attributes(paint);
    xml.text(text.content());
    xml.endLeaf();
  }
}
