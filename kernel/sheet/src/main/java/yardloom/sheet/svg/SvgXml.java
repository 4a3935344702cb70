package yardloom.sheet.svg;

import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes elements, one on a line, and numbers. */
final class SvgXml {
  private static final String SVG = "http://www.w3.org/2000/svg";

  private final XMLStreamWriter xml;

  SvgXml(OutputStream out) throws XMLStreamException {
    xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
    xml.setDefaultNamespace(SVG);
    xml.writeStartDocument("UTF-8", "1.0");
  }

  void root(String... attributes) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement(SVG, "svg");
    xml.writeDefaultNamespace(SVG);
    attributes(attributes);
  }

  void finish() throws XMLStreamException {
    end();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
    xml.flush();
  }

  /** Opens an element; {@code attributes} are pairs of name and value. */
  void start(String name, String... attributes) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement(SVG, name);
    attributes(attributes);
  }

  void attributes(String... pairs) throws XMLStreamException {
    for (int i = 0; i < pairs.length; i += 2) {
      xml.writeAttribute(pairs[i], pairs[i + 1]);
    }
  }

  void end() throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeEndElement();
  }

  /** Closes an element that holds no others. */
  void endLeaf() throws XMLStreamException {
    xml.writeEndElement();
  }

  void empty(String name, String... attributes) throws XMLStreamException {
    start(name, attributes);
    endLeaf();
  }

  void element(String name, String text) throws XMLStreamException {
    start(name);
    text(text);
    endLeaf();
  }

  /** Text; characters that XML cannot hold become a replacement sign. */
  void text(String text) throws XMLStreamException {
    StringBuilder kept = new StringBuilder();
    text.codePoints().forEach(c -> kept.appendCodePoint(isAllowed(c) ? c : 0xfffd));
    xml.writeCharacters(kept.toString());
  }

  private static boolean isAllowed(int c) {
    return c == '\t' || c >= 0x20 && c < 0xd800 || c >= 0xe000 && c <= 0xfffd || c >= 0x10000;
  }

  /** Two decimals at most, no trailing zeros, no negative zero. */
  static String number(double value) {
    double hundredths = Math.abs(value) * 100;
    double whole = Math.floor(hundredths);
    double part = hundredths - whole;
    if (hundredths < 1e9 && Math.abs(part - 0.5) > 1e-5) {
      // Far enough from a half that the product's own rounding cannot turn it.
      return plain((long) whole + (part > 0.5 ? 1 : 0), value < 0);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  private static String plain(long hundredths, boolean negative) {
    if (hundredths == 0) {
      return "0";
    }
    StringBuilder text = new StringBuilder(negative ? "-" : "").append(hundredths / 100);
    int rest = (int) (hundredths % 100);
    if (rest > 0) {
      text.append('.').append((char) ('0' + rest / 10));
      if (rest % 10 > 0) {
        text.append((char) ('0' + rest % 10));
      }
    }
    return text.toString();
  }
}
