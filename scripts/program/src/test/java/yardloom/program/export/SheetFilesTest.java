package yardloom.program.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

class SheetFilesTest {
  @TempDir private Path folder;

  private static List<ComposedSheet> demo(String paper, UnitSystem units) {
    return new SheetComposer(FontWidths.shipped())
        .composeSet(List.of(DemoSheet.request(Paper.named(paper), units)));
  }

  static Stream<Paper> papers() {
    return Paper.all().stream();
  }

  @ParameterizedTest
  @MethodSource("papers")
  void svg_everyPaper_isReadByBatikWithoutComplaint(Paper paper) throws IOException {
    for (ComposedSheet sheet : demo(paper.name(), UnitSystem.US)) {
      UserAgentAdapter strict =
          new UserAgentAdapter() {
            @Override
            public void displayError(Exception e) {
              throw new AssertionError(e);
            }

            @Override
            public void displayError(String message) {
              throw new AssertionError(message);
            }
          };
      BridgeContext context = new BridgeContext(strict);
      var document = SvgDocuments.of(SvgSheet.of(sheet));
      new TextOutlines().replaceIn(document);
      var root = new GVTBuilder().build(context, document);
      assertTrue(root.getBounds().getWidth() > 100);
      assertEquals(sheet.paper().widthMm(), root.getBounds().getWidth() / 96 * 25.4, 1);
    }
  }

  /** V-01 to V-03: sizes seen with Batik 1.19; width in mm over 25.4 times dots per inch. */
  @ParameterizedTest
  @CsvSource({"A4,96,794,1123", "A4,100,827,1169", "ARCH D,96,3456,2304"})
  void png_anyResolution_hasThePapersDots(String paper, int dpi, int width, int height)
      throws IOException {
    ComposedSheet sheet = demo(paper, UnitSystem.METRIC).get(0);
    Path png = folder.resolve("sheet.png");
    PngWriter.write(SvgSheet.of(sheet), dpi, png);
    BufferedImage image = ImageIO.read(png.toFile());
    boolean standing = sheet.paper().heightMm() > sheet.paper().widthMm();
    assertEquals(standing ? Math.min(width, height) : Math.max(width, height), image.getWidth(), 1);
    assertEquals(
        standing ? Math.max(width, height) : Math.min(width, height), image.getHeight(), 1);
  }

  @Test
  void png_titleBlock_hasInk() throws IOException {
    ComposedSheet sheet = demo("A3", UnitSystem.METRIC).get(0);
    Path png = folder.resolve("sheet.png");
    PngWriter.write(SvgSheet.of(sheet), 96, png);
    BufferedImage image = ImageIO.read(png.toFile());
    int dark = 0;
    for (int x = image.getWidth() * 3 / 4; x < image.getWidth() - 50; x++) {
      for (int y = image.getHeight() * 4 / 5; y < image.getHeight() - 45; y++) {
        dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
      }
    }
    assertTrue(dark > 1500, dark + " dark dots in the title block");
  }

  @Test
  void png_tooManyDots_isRefusedWithoutAFile() {
    ComposedSheet sheet = demo("ARCH E", UnitSystem.US).get(0);
    Path png = folder.resolve("sheet.png");
    PlanException e =
        assertThrows(PlanException.class, () -> PngWriter.write(SvgSheet.of(sheet), 600, png));
    assertEquals(ProblemCode.LIMIT, e.problems().get(0).code());
    assertFalse(Files.exists(png));
  }

  @Test
  void png_folderMissing_saysSo() {
    ComposedSheet sheet = demo("A4", UnitSystem.US).get(0);
    Path nowhere = folder.resolve("missing").resolve("sheet.png");
    PlanException e =
        assertThrows(PlanException.class, () -> PngWriter.write(SvgSheet.of(sheet), 20, nowhere));
    assertEquals(ProblemCode.FILE, e.problems().get(0).code());
  }

  @Test
  void pdf_pages_haveThePapersSizeAndEmbeddedText() throws IOException {
    List<ComposedSheet> sheets = demo("ARCH A", UnitSystem.US);
    assertTrue(sheets.size() > 1);
    Path pdf = folder.resolve("set.pdf");
    PdfWriter.write(sheets.stream().map(SvgSheet::of).toList(), "Demo", "", pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertEquals(sheets.size(), document.getNumberOfPages());
      for (int i = 0; i < sheets.size(); i++) {
        PDPage page = document.getPage(i);
        Paper paper = sheets.get(i).paper();
        assertEquals(paper.widthMm(), page.getMediaBox().getWidth() / 72 * 25.4, 0.4);
        assertEquals(paper.heightMm(), page.getMediaBox().getHeight() / 72 * 25.4, 0.4);
        int fonts = 0;
        for (COSName name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          assertTrue(font.getName().contains("NotoSans"), font.getName());
          fonts++;
        }
        assertTrue(fonts > 0);
        assertEquals(0, count(page.getResources().getXObjectNames()), "pictures instead of lines");
      }
      Set<COSBase> fontFiles = new HashSet<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          fontFiles.add(
              page.getResources().getFont(name).getFontDescriptor().getFontFile2().getCOSObject());
        }
      }
      assertEquals(2, fontFiles.size(), "regular and bold, each once in the file");
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Kitchen garden on Elm Street"), text);
      assertTrue(text.contains("60'-0\""), text);
    }
  }

  /** XMP (ISO 16684-1) and the old dictionary say the same; sheets are found by name and number. */
  @Test
  void pdf_saysWhatItIs_andNamesItsPages() throws Exception {
    List<ComposedSheet> sheets = demo("ARCH A", UnitSystem.US);
    Path pdf = folder.resolve("named.pdf");
    PdfWriter.write(
        sheets.stream().map(SvgSheet::of).toList(), "Beds & berries <1>", "A. Drafter", pdf);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDDocumentCatalog catalog = document.getDocumentCatalog();
      DocumentBuilderFactory readers = DocumentBuilderFactory.newInstance();
      readers.setNamespaceAware(true);
      var xmp =
          readers
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(catalog.getMetadata().toByteArray()));
      String dc = "http://purl.org/dc/elements/1.1/";
      for (String[] said :
          new String[][] {
            {"title", "Beds & berries <1>"},
            {"creator", "A. Drafter"},
            {"description", sheets.size() + " sheets"}
          }) {
        assertEquals(
            said[1], xmp.getElementsByTagNameNS(dc, said[0]).item(0).getTextContent().strip());
      }
      assertEquals("Beds & berries <1>", document.getDocumentInformation().getTitle());
      assertEquals("A. Drafter", document.getDocumentInformation().getAuthor());
      assertEquals("en", catalog.getLanguage());
      String[] labels = catalog.getPageLabels().getLabelsByPageIndices();
      PDOutlineItem item = catalog.getDocumentOutline().getFirstChild();
      for (int i = 0; i < sheets.size(); i++) {
        assertEquals(String.valueOf(sheets.get(i).number()), labels[i]);
        assertEquals(sheets.get(i).number() + " " + sheets.get(i).title(), item.getTitle());
        assertEquals(document.getPage(i), item.findDestinationPage(document));
        item = item.getNextSibling();
      }
    }
  }

  private static int count(Iterable<COSName> names) throws IOException {
    int n = 0;
    for (COSName name : names) {
      n++;
    }
    return n;
  }

  @Test
  void pdf_sameSheetsTwice_haveTheSameBytes() throws IOException {
    List<ComposedSheet> sheets = demo("A3", UnitSystem.METRIC);
    PdfWriter.write(
        sheets.stream().map(SvgSheet::of).toList(), "Demo", "", folder.resolve("one.pdf"));
    PdfWriter.write(
        sheets.stream().map(SvgSheet::of).toList(), "Demo", "", folder.resolve("two.pdf"));
    assertArrayEquals(
        Files.readAllBytes(folder.resolve("one.pdf")),
        Files.readAllBytes(folder.resolve("two.pdf")));
  }
}
