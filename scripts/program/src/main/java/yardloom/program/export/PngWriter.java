package yardloom.program.export;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.batik.ext.awt.image.GraphicsUtil;
import org.apache.batik.gvt.renderer.StaticRenderer;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.w3c.dom.Document;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgSheet;

/**
 * Paints sheets as PNG pictures. Text is painted from the outlines of the shipped font. Pictures
 * may differ in a few pixels from one Java version to another.
 */
public final class PngWriter {
  /** Dots per inch: sharp on a screen, and good for print to A3. */
  public static final int USUAL_DPI = 150;

  private static final double INCH_MM = 25.4;
  private static final long MOST_PIXELS = 150_000_000;

  private PngWriter() {}

  /**
   * @throws PlanException (LIMIT) if a picture of the paper would be too large for the memory
   */
  public static void requireRoom(Paper paper, int dpi) {
    long pixels =
        Math.round(paper.widthMm() / INCH_MM * dpi) * Math.round(paper.heightMm() / INCH_MM * dpi);
    if (dpi < 1 || pixels > MOST_PIXELS) {
      throw new PlanException(
          ProblemCode.LIMIT,
          "a picture of "
              + paper.name()
              + " at "
              + dpi
              + " dots per inch has "
              + pixels / 1_000_000
              + " million dots; from 1 dot per inch up to "
              + MOST_PIXELS / 1_000_000
              + " million dots are possible, so give fewer dots per inch or write PDF");
    }
  }

  /**
   * @throws PlanException (LIMIT) if the picture would be too large for the memory; (FILE) if it
   *     cannot be written
   */
  public static void write(SvgSheet drawn, int dpi, Path file) {
    ComposedSheet sheet = drawn.sheet();
    requireRoom(sheet.paper(), dpi);
    WholeFile.write(
        file,
        out -> {
          Document document = SvgDocuments.of(drawn);
          new TextOutlines().replaceIn(document);
          SVGAbstractTranscoder transcoder = new Painter(dpi);
          transcoder.setErrorHandler(new BatikComplaints());
          transcoder.addTranscodingHint(
              SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (INCH_MM / dpi));
          transcoder.addTranscodingHint(
              SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, Boolean.FALSE);
          transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, Boolean.FALSE);
          try {
            transcoder.transcode(new TranscoderInput(document), new TranscoderOutput(out));
          } catch (TranscoderException e) {
            throw new IOException("the sheet " + sheet.id() + " cannot be painted", e);
          }
        });
  }

  /**
   * Paints with Batik, writes with {@link PngFile}. Batik's own transcoder paints through a cache
   * of tiles into a second picture and copies that into a third; here the tree is painted once,
   * into the picture that is written.
   */
  private static final class Painter extends SVGAbstractTranscoder {
    private final int dpi;

    Painter(int dpi) {
      this.dpi = dpi;
    }

    @Override
    protected void transcode(Document document, String uri, TranscoderOutput output)
        throws TranscoderException {
      super.transcode(document, uri, output);
      try {
        PngFile.write(painted(), dpi, output.getOutputStream());
      } catch (IOException e) {
        throw new TranscoderException(e);
      }
    }

    private BufferedImage painted() {
      BufferedImage image =
          new BufferedImage(
              (int) (width + 0.5), (int) (height + 0.5), BufferedImage.TYPE_INT_ARGB_PRE);
      RenderingHints hints = new StaticRenderer().getRenderingHints();
      Graphics2D graphics = GraphicsUtil.createGraphics(image, hints);
      graphics.transform(curTxf);
      root.paint(graphics);
      graphics.dispose();
      return image;
    }
  }
}
