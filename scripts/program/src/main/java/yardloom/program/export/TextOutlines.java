package yardloom.program.export;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Replaces the texts of a drawing by their outlines in the shipped font, so that a machine without
 * fonts paints the same picture. Understands the attributes that our own writer uses.
 */
final class TextOutlines {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final List<String> KEPT =
      List.of("transform", "fill", "stroke", "stroke-width", "stroke-linejoin");

  private final ShippedFont regular;
  private final ShippedFont bold;

  TextOutlines() throws IOException {
    regular = ShippedFont.load(false);
    bold = ShippedFont.load(true);
  }

  void replaceIn(Document document) throws IOException {
    List<Element> texts = new ArrayList<>();
    NodeList found = document.getElementsByTagNameNS(SVG, "text");
    for (int i = 0; i < found.getLength(); i++) {
      texts.add((Element) found.item(i));
    }
    for (Element text : texts) {
      Element path = document.createElementNS(SVG, "path");
      for (String name : KEPT) {
        if (text.hasAttribute(name)) {
          path.setAttribute(name, text.getAttribute(name));
        }
      }
      path.setAttribute("d", outline(text));
      text.getParentNode().replaceChild(path, text);
    }
  }

  private String outline(Element text) throws IOException {
    ShippedFont font = text.getAttribute("font-weight").equals("bold") ? bold : regular;
    double em = Double.parseDouble(text.getAttribute("font-size"));
    int[] codes = text.getTextContent().codePoints().toArray();
    double perMille = 0;
    for (int code : codes) {
      perMille += font.perMille(code);
    }
    double x = Double.parseDouble(text.getAttribute("x"));
    double y = Double.parseDouble(text.getAttribute("y"));
    x -=
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> perMille * em / 2000;
          case "end" -> perMille * em / 1000;
          default -> 0;
        };
    StringBuilder d = new StringBuilder();
    for (int code : codes) {
      AffineTransform place = AffineTransform.getTranslateInstance(x, y);
      place.scale(em / font.unitsPerEm(), -em / font.unitsPerEm());
      append(font.outline(code), place, d);
      x += font.perMille(code) * em / 1000;
    }
    return d.isEmpty() ? "M0 0" : d.toString();
  }

  private static void append(Shape outline, AffineTransform place, StringBuilder d) {
    double[] c = new double[6];
    for (PathIterator i = outline.getPathIterator(place); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> numbers('M', c, 2, d);
        case PathIterator.SEG_LINETO -> numbers('L', c, 2, d);
        case PathIterator.SEG_QUADTO -> numbers('Q', c, 4, d);
        case PathIterator.SEG_CUBICTO -> numbers('C', c, 6, d);
        default -> d.append('Z');
      }
    }
  }

  private static void numbers(char command, double[] c, int count, StringBuilder d) {
    for (int i = 0; i < count; i++) {
      d.append(i == 0 ? command : ' ');
      append(c[i], d);
    }
  }

  /** Four decimals, a half rounded away from zero. */
  private static void append(double value, StringBuilder text) {
    double scaled = Math.abs(value) * 1e4;
    double part = scaled - Math.floor(scaled);
    if (scaled > 1e10 || Math.abs(part - 0.5) < 1e-4) {
      // So near to a half that the product's own rounding might turn it.
      text.append(BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).toPlainString());
      return;
    }
    long n = (long) scaled + (part > 0.5 ? 1 : 0);
    text.append(value < 0 ? "-" : "").append(n / 10_000).append('.');
    for (long place = 1000; place > 0; place /= 10) {
      text.append((char) ('0' + n / place % 10));
    }
  }
}
