package yardloom.program.export;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.fop.configuration.ConfigurationException;
import org.apache.fop.configuration.DefaultConfigurationBuilder;
import org.apache.fop.svg.PDFTranscoder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import yardloom.sheet.svg.SvgSheet;

/**
 * Writes sheets as one PDF, a page each in the size of its paper. Text stays text, in the shipped
 * font, which is embedded. Bookmarks and page labels name the sheets. No dates are written.
 */
public final class PdfWriter {
  /** Fixed, so that the same sheets give the same file. */
  private static final long DOCUMENT_ID = 0;

  private static final float POINTS_PER_INCH = 72;
  private static final float INCH_MM = 25.4f;

  private PdfWriter() {}

  /**
   * @param title what a viewer shows in its window
   * @param author who drew the plan; may be empty
   * @throws yardloom.kernel.problem.PlanException (FILE) if it cannot be written
   */
  public static void write(List<SvgSheet> sheets, String title, String author, Path file) {
    WholeFile.write(
        file,
        out -> {
          List<PDDocument> parts = new ArrayList<>();
          try (PDDocument set = new PDDocument()) {
            for (byte[] page : PageWorkers.each(sheets, PdfWriter::page)) {
              PDDocument part = Loader.loadPDF(page);
              parts.add(part);
              new PDFMergerUtility().appendDocument(set, part);
            }
            PdfMetadata.say(set, title, author, sheets.size());
            PdfPages.name(set, sheets.stream().map(SvgSheet::sheet).toList());
            SharedFonts.in(set);
            set.setDocumentId(DOCUMENT_ID);
            set.save(out);
          } finally {
            for (PDDocument part : parts) {
              part.close();
            }
          }
        });
  }

  private static byte[] page(SvgSheet sheet) throws IOException {
    PDFTranscoder transcoder = new PDFTranscoder();
    transcoder.setErrorHandler(new BatikComplaints());
    transcoder.addTranscodingHint(
        SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, INCH_MM / POINTS_PER_INCH);
    transcoder.addTranscodingHint(
        SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, Boolean.FALSE);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, Boolean.FALSE);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      transcoder.configure(
          new DefaultConfigurationBuilder()
              .build(new ByteArrayInputStream(fonts().getBytes(StandardCharsets.UTF_8))));
      transcoder.transcode(new TranscoderInput(SvgDocuments.of(sheet)), new TranscoderOutput(out));
    } catch (TranscoderException | ConfigurationException e) {
      throw new IOException("the sheet " + sheet.sheet().id() + " cannot be set as PDF", e);
    }
    return out.toByteArray();
  }

  /**
   * Without this FOP takes Times and embeds nothing. Fonts are embedded whole: parts of them would
   * number their letters by page, and could not be shared between pages.
   */
  private static String fonts() {
    return "<cfg><fonts>" + face(false, "normal") + face(true, "bold") + "</fonts></cfg>";
  }

  private static String face(boolean bold, String weight) {
    return "<font kerning=\"no\" embedding-mode=\"full\" embed-url=\""
        + ShippedFont.file(bold)
        + "\"><font-triplet name=\""
        + ShippedFont.FAMILY
        + "\" style=\"normal\" weight=\""
        + weight
        + "\"/></font>";
  }
}
