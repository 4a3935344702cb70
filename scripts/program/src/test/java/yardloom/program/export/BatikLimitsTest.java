package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.SAXParserFactory;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgWriter;

/**
 * What our drawings rely on and why they leave other things out, as seen with Batik 1.19, and their
 * validity by the SVG 1.1 document type.
 */
class BatikLimitsTest {
  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='200' viewBox='0 0 200 200'>";

  private static int darkDots(String body) throws TranscoderException, IOException {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.setErrorHandler(new BatikComplaints());
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    transcoder.transcode(
        new TranscoderInput(new StringReader(OPEN + body + "</svg>")), new TranscoderOutput(png));
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        int argb = image.getRGB(x, y);
        dark += argb >>> 24 > 127 && (argb & 0xff) < 128 ? 1 : 0;
      }
    }
    return dark;
  }

  /** V-05: a tile a quarter black gives a quarter of the dots. */
  @Test
  void pattern_quarterTile_fillsAQuarter() throws Exception {
    assertEquals(
        10_000,
        darkDots(
            "<defs><pattern id='p' patternUnits='userSpaceOnUse' width='10' height='10'>"
                + "<rect width='5' height='5'/></pattern></defs>"
                + "<rect width='200' height='200' fill='url(#p)'/>"));
  }

  /** V-04: vector-effect changes nothing, so line widths are given in paper millimetres. */
  @Test
  void vectorEffect_isIgnored() throws Exception {
    String line = "<path d='M5 5L45 45' stroke='black' stroke-width='2' transform='scale(4)'";
    assertEquals(darkDots(line + "/>"), darkDots(line + " vector-effect='non-scaling-stroke'/>"));
  }

  /** V-07, V-08: plain href and auto-start-reverse end in an exception. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<rect id='a' width='9' height='9'/><use href='#a'/>",
        "<defs><marker id='m' orient='auto-start-reverse'><path d='M0 0L3 3'/></marker></defs>"
            + "<path d='M0 0L9 9' stroke='black' marker-end='url(#m)'/>"
      })
  void svg2Features_areRejected(String body) {
    assertThrows(TranscoderException.class, () -> darkDots(body));
  }

  private static List<String> faults(String svg) throws Exception {
    List<String> faults = new ArrayList<>();
    SAXParserFactory factory = SAXParserFactory.newInstance();
    factory.setValidating(true);
    factory.setNamespaceAware(true);
    factory
        .newSAXParser()
        .parse(
            new InputSource(
                new StringReader(
                    "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'svg11.dtd'>" + svg)),
            new DefaultHandler() {
              @Override
              public InputSource resolveEntity(String publicId, String systemId) {
                return new InputSource(
                    BatikLimitsTest.class.getResourceAsStream(
                        "/org/apache/batik/dom/svg/resources/svg11-flat.dtd"));
              }

              @Override
              public void error(SAXParseException e) {
                faults.add(e.getMessage());
              }
            });
    return faults;
  }

  /** V-11 to V-13: the document type finds what is wrong and passes what is right. */
  @Test
  void documentType_knowsRightFromWrong() throws Exception {
    assertEquals(
        0,
        faults(OPEN + "<title>t</title><desc>d</desc><rect width='1' height='1'/></svg>").size());
    assertEquals(1, faults(OPEN.replace(" width", " role='img' width") + "</svg>").size());
    assertEquals(true, faults(OPEN + "<rectt/></svg>").size() > 0);
  }

  @Test
  void ourSheets_areValidSvg11() throws Exception {
    for (Paper paper : List.of(Paper.named("A4"), Paper.named("ARCH C"))) {
      for (ComposedSheet sheet :
          new SheetComposer(FontWidths.shipped())
              .composeSet(List.of(DemoSheet.request(paper, UnitSystem.US)))) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.write(sheet, out);
        String svg = out.toString(StandardCharsets.UTF_8);
        assertEquals(List.of(), faults(svg.substring(svg.indexOf("<svg"))));
      }
    }
  }
}
