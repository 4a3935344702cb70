package yardloom.program.sitefile;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import yardloom.kernel.draw.Logo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * Reads a logo: the filled outlines of an SVG text. Whatever could bring in something from
 * elsewhere, run, or look different in another viewer is refused by name. Document types, and with
 * them entities, are not read.
 *
 * <p>References: [1] Scalable Vector Graphics (SVG) 1.1 (Second Edition), W3C, 2011, sections 7.6
 * (transform), 8.3 (path data), 9 (shapes), 11.3 (fill, inherited, black unless said).
 */
final class SvgLogo {
  private static final int LONGEST = 200_000;
  private static final int DEEPEST = 50;
  private static final int MOST_DOTS = 5_000;
  private static final double LONGEST_SIDE = 8;
  private static final double FAR = 1e6;

  private static final Set<String> SILENT =
      Set.of("title", "desc", "metadata", "defs", "namedview");
  private static final Set<String> HARMLESS =
      Set.of(
          "id",
          "version",
          "width",
          "height",
          "viewBox",
          "d",
          "points",
          "x",
          "y",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "fill",
          "fill-rule",
          "fill-opacity",
          "opacity",
          "transform",
          "style",
          "stroke",
          "class",
          "role",
          "space",
          "label",
          "baseProfile",
          "docname",
          "nodetypes",
          "stroke-width",
          "stroke-linejoin",
          "stroke-linecap",
          "enable-background");
  private static final Map<String, String> NAMED =
      Map.of("black", "#000000", "white", "#ffffff", "red", "#ff0000", "green", "#008000");
  private static final Pattern STYLE = Pattern.compile("\\s*([a-z-]+)\\s*:\\s*([^;]*)\\s*");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,2})?");

  /** What a group hands to its members. */
  private record Inherited(String fill, boolean isEvenOdd, SvgTransform at) {}

  private final List<Logo.Piece> pieces = new ArrayList<>();
  private final Deque<Inherited> groups = new ArrayDeque<>();
  private double[] box;
  private int dots;

  private SvgLogo() {}

  /**
   * The logo of an SVG text.
   *
   * @throws PlanException (SYNTAX) if it is no SVG, (FORBIDDEN) if it has what a logo may not have,
   *     (LIMIT) if it is too long, (OUT_OF_RANGE) if it is empty or its field is too flat
   */
  static Logo read(String svg) {
    if (svg.length() > LONGEST) {
      throw new PlanException(
          ProblemCode.LIMIT,
          "the logo has "
              + svg.length()
              + " letters, at most 200000 are read; every sheet carries it, so simplify its"
              + " curves");
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      SvgLogo logo = new SvgLogo();
      logo.all(factory.createXMLStreamReader(new StringReader(svg.strip())));
      return logo.finished();
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
      throw new PlanException(
          ProblemCode.SYNTAX,
          "the logo is not well-formed SVG, see its line "
              + line
              + "; save it again as plain SVG, without a document type");
    }
  }

  private Logo finished() {
    if (pieces.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the logo has no filled outline; a logo is made of <path fill>");
    }
    return new Logo(box[2], box[3], pieces);
  }

  private void all(XMLStreamReader in) throws XMLStreamException {
    while (in.hasNext()) {
      int event = in.next();
      if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
        throw forbidden("a document type or an entity");
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        start(in);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        groups.pop();
      } else if (event == XMLStreamConstants.PROCESSING_INSTRUCTION) {
        throw forbidden("the instruction <?" + in.getPITarget() + "?>");
      }
    }
  }

  private void start(XMLStreamReader in) throws XMLStreamException {
    String name = in.getLocalName();
    if (box == null) {
      root(in, name);
    }
    if (SILENT.contains(name)) {
      skip(in);
      return;
    }
    if (groups.size() > DEEPEST) {
      throw new PlanException(ProblemCode.LIMIT, "the logo's groups lie more than 50 deep");
    }
    Inherited now = inherited(in, groups.peek());
    groups.push(now);
    switch (name) {
      case "svg", "g" -> {
        // Hands on what it says.
      }
      case "path" -> add(now, new SvgPathData(text(in, "d")).rings());
      case "polygon" -> add(now, SvgPathData.polygon(numbers(text(in, "points"))));
      case "rect" ->
          add(
              now,
              SvgPathData.rectangle(
                  number(in, "x"), number(in, "y"), number(in, "width"), number(in, "height")));
      case "circle" ->
          add(
              now,
              SvgPathData.ellipse(
                  number(in, "cx"), number(in, "cy"), number(in, "r"), number(in, "r")));
      case "ellipse" ->
          add(
              now,
              SvgPathData.ellipse(
                  number(in, "cx"), number(in, "cy"), number(in, "rx"), number(in, "ry")));
      default -> throw forbidden("<" + name + ">");
    }
  }

  private void root(XMLStreamReader in, String name) {
    if (!name.equals("svg")) {
      throw new PlanException(
          ProblemCode.SYNTAX, "the logo begins with <" + name + ">, SVG begins with <svg>");
    }
    box = numbers(text(in, "viewBox"));
    if (box.length != 4
        || !(box[2] > 0 && box[3] > 0)
        || box[2] > LONGEST_SIDE * box[3]
        || box[3] > LONGEST_SIDE * box[2]) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the logo needs a viewBox of four numbers, of which neither side is more than 8 times the"
              + " other, such as viewBox=\"0 0 200 80\"; got '"
              + text(in, "viewBox")
              + "'");
    }
    groups.push(new Inherited("#000000", false, SvgTransform.moved(-box[0], -box[1])));
  }

  private static void skip(XMLStreamReader in) throws XMLStreamException {
    int depth = 1;
    while (depth > 0 && in.hasNext()) {
      int event = in.next();
      depth += event == XMLStreamConstants.START_ELEMENT ? 1 : 0;
      depth -= event == XMLStreamConstants.END_ELEMENT ? 1 : 0;
    }
  }

  private Inherited inherited(XMLStreamReader in, Inherited outer) {
    Inherited now = outer;
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String name = in.getAttributeLocalName(i);
      String value = in.getAttributeValue(i).strip();
      if (!HARMLESS.contains(name)) {
        throw forbidden("the attribute " + name);
      } else if (name.equals("style")) {
        for (String part : value.split(";")) {
          Matcher said = STYLE.matcher(part);
          require(said.matches() || part.isBlank(), "the style '" + part + "'");
          now = part.isBlank() ? now : with(now, said.group(1), said.group(2).strip());
        }
      } else {
        now = with(now, name, value);
      }
    }
    return now;
  }

  /** After this property; those that do not change a filled outline are passed over. */
  private static Inherited with(Inherited now, String property, String value) {
    switch (property) {
      case "transform":
        return new Inherited(now.fill(), now.isEvenOdd(), now.at().then(SvgTransform.of(value)));
      case "fill":
        return new Inherited(colour(value), now.isEvenOdd(), now.at());
      case "fill-rule":
        return new Inherited(now.fill(), value.equals("evenodd"), now.at());
      case "stroke":
        require(value.equals("none"), "a stroke (make it an outline)");
        return now;
      case "opacity", "fill-opacity":
        require(value.matches("1(\\.0*)?"), property + " other than 1 (give the mixed colour)");
        return now;
      case "filter", "mask", "clip-path", "display", "visibility":
        require(value.matches("none|inline|visible"), property);
        return now;
      default:
        require(!value.toLowerCase(Locale.ROOT).contains("url("), "url(…)");
        return now;
    }
  }

  private static String colour(String said) {
    String value = said.toLowerCase(Locale.ROOT);
    if (value.equals("none")) {
      return "";
    }
    if (value.matches("#[0-9a-f]{6}")) {
      return value;
    }
    if (value.matches("#[0-9a-f]{3}")) {
      return value.replaceAll("([0-9a-f])", "$1$1");
    }
    String named = NAMED.get(value);
    require(named != null, "the fill '" + said + "' (write it as #rrggbb)");
    return named;
  }

  private void add(Inherited now, List<List<Logo.Dot>> rings) {
    if (now.fill().isEmpty() || rings.isEmpty()) {
      return;
    }
    List<List<Logo.Dot>> placed =
        rings.stream().map(ring -> ring.stream().map(now.at()::of).toList()).toList();
    dots += placed.stream().mapToInt(List::size).sum();
    for (Logo.Dot dot : placed.stream().flatMap(List::stream).toList()) {
      require(Math.abs(dot.x()) < FAR && Math.abs(dot.y()) < FAR, "a corner far off its field");
    }
    if (dots > MOST_DOTS) {
      throw new PlanException(
          ProblemCode.LIMIT,
          "the logo has more than 5000 corners, curves counted by their pieces; simplify it, since"
              + " every sheet carries it");
    }
    pieces.add(
        new Logo.Piece(now.fill(), now.isEvenOdd() ? SvgPathData.alternate(placed) : placed));
  }

  private static String text(XMLStreamReader in, String name) {
    String value = in.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  private static double number(XMLStreamReader in, String name) {
    double[] all = numbers(text(in, name));
    return all.length == 0 ? 0 : all[0];
  }

  static double[] numbers(String text) {
    List<Double> found = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      found.add(Double.parseDouble(matcher.group()));
    }
    return found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw forbidden(what);
    }
  }

  private static PlanException forbidden(String what) {
    return new PlanException(
        ProblemCode.FORBIDDEN,
        "the logo has "
            + what
            + "; a logo is made of filled path, polygon, rect, circle and ellipse alone");
  }
}
