package yardloom.program.export;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.w3c.dom.Document;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.svg.SvgWriter;

/** A sheet as Batik's document tree. */
final class SvgDocuments {
  private SvgDocuments() {}

  static Document of(ComposedSheet sheet) throws IOException {
    ByteArrayOutputStream svg = new ByteArrayOutputStream();
    SvgWriter.write(sheet, svg);
    return new SAXSVGDocumentFactory(null)
        .createDocument("file:/sheet.svg", new ByteArrayInputStream(svg.toByteArray()));
  }
}
