package yardloom.program.export;

import java.io.IOException;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.w3c.dom.Document;
import yardloom.sheet.svg.SvgSheet;

/** A sheet as Batik's document tree. */
final class SvgDocuments {
  private SvgDocuments() {}

  static Document of(SvgSheet sheet) throws IOException {
    return new SAXSVGDocumentFactory(null).createDocument("file:/sheet.svg", sheet.open());
  }
}
