package yardloom.sheet.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.compose.SheetRequest;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;

class SvgWriterTest {
  private static byte[] demo() {
    return svg(sheet(DemoSheet.request(Paper.named("A3"), UnitSystem.METRIC)));
  }

  private static ComposedSheet sheet(SheetRequest request) {
    return new SheetComposer(FontWidths.shipped()).compose(request).get(0);
  }

  private static byte[] svg(ComposedSheet sheet) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(sheet, out);
    return out.toByteArray();
  }

  private static Document parse(byte[] svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg));
  }

  @Test
  void svg_anyLocaleAndZone_hasTheSameBytes() {
    byte[] first = demo();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertArrayEquals(first, demo());
      Locale.setDefault(Locale.GERMANY);
      assertArrayEquals(first, demo());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  /** Issue-free subset: drawing reference V-04 to V-14, what SVG 1.1 viewers cannot do. */
  @Test
  void svg_subset_holdsNothingThatOldViewersReject() {
    String text = new String(demo(), StandardCharsets.UTF_8);
    for (String banned :
        List.of(
            "<!DOCTYPE",
            "href",
            "vector-effect",
            "paint-order",
            "rgba(",
            "auto-start-reverse",
            "opacity",
            "<style",
            "NaN",
            "Infinity",
            "role=")) {
      assertFalse(text.contains(banned), banned);
    }
    assertFalse(Pattern.compile("#[0-9a-f]{8}\"").matcher(text).find());
  }

  @Test
  void svg_root_isThePaperInMillimetres() throws Exception {
    Element root = parse(demo()).getDocumentElement();
    assertEquals("420mm", root.getAttribute("width"));
    assertEquals("297mm", root.getAttribute("height"));
    assertEquals("0 0 420 297", root.getAttribute("viewBox"));
  }

  /** SVG: title should be the first child of its parent, and the root should have one. */
  @Test
  void svg_titles_comeFirst() throws Exception {
    Document document = parse(demo());
    var titles = document.getElementsByTagName("title");
    assertTrue(titles.getLength() > 20);
    for (int i = 0; i < titles.getLength(); i++) {
      var before = titles.item(i).getPreviousSibling();
      assertTrue(before == null || before.getPreviousSibling() == null);
    }
  }

  @Test
  void svg_ids_areUniqueAndBeginWithTheSheet() {
    Matcher ids =
        Pattern.compile(" id=\"([^\"]*)\"").matcher(new String(demo(), StandardCharsets.UTF_8));
    Set<String> seen = new HashSet<>();
    while (ids.find()) {
      assertTrue(seen.add(ids.group(1)), ids.group(1));
      assertTrue(ids.group(1).startsWith("site-plan-"));
    }
    assertTrue(seen.contains("site-plan-bed-bed-1"), seen.toString());
  }

  @Test
  void svg_markupInNames_isEscaped() throws Exception {
    PlanInfo info =
        new PlanInfo("p", "A & B <script>\"x\"</script>", "\u0007", "", "", "", UnitSystem.US, "$");
    SheetPlan plan =
        new SheetPlan(1, "n", "Notes", List.of(new Panel.Notes("T", List.of("1 < 2 & 3"))));
    byte[] svg = svg(sheet(SheetRequest.of(plan, Paper.named("A4"), info)));
    Document document = parse(svg);
    assertEquals(0, document.getElementsByTagName("script").getLength());
    assertTrue(document.getDocumentElement().getTextContent().contains("1 < 2 & 3"));
  }

  @ParameterizedTest
  @CsvSource({"1,1", "0.005,0.01", "-0.004,0", "25.4,25.4", "1e-9,0", "123456.789,123456.79"})
  void number_anyValue_hasTwoDecimalsAtMost(double value, String text) {
    assertEquals(text, SvgXml.number(value));
  }
}
