package yardloom.program.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.xml.transform.TransformerConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.xmlgraphics.xmp.Metadata;
import org.apache.xmlgraphics.xmp.XMPSerializer;
import org.apache.xmlgraphics.xmp.schemas.DublinCoreAdapter;
import org.apache.xmlgraphics.xmp.schemas.DublinCoreSchema;
import org.apache.xmlgraphics.xmp.schemas.XMPBasicAdapter;
import org.apache.xmlgraphics.xmp.schemas.XMPBasicSchema;
import org.xml.sax.SAXException;

/**
 * What a document is, said twice: in the old information dictionary, and as XMP for archives and
 * search. Both say the same; no dates, so that the same sheets give the same file.
 */
final class PdfMetadata {
  private static final String PROGRAM = "Yardloom";

  private PdfMetadata() {}

  /**
   * @param author may be empty
   */
  static void say(PDDocument set, String title, String author, int sheets) throws IOException {
    String subject = sheets + (sheets == 1 ? " sheet" : " sheets");
    PDDocumentInformation info = new PDDocumentInformation();
    info.setTitle(title);
    if (!author.isBlank()) {
      info.setAuthor(author);
    }
    info.setCreator(PROGRAM);
    info.setSubject(subject);
    set.setDocumentInformation(info);
    PDMetadata metadata = new PDMetadata(set);
    metadata.importXMPMetadata(packet(title, author, subject));
    set.getDocumentCatalog().setMetadata(metadata);
  }

  private static byte[] packet(String title, String author, String subject) throws IOException {
    Metadata all = new Metadata();
    DublinCoreAdapter core = DublinCoreSchema.getAdapter(all);
    core.setTitle(title);
    if (!author.isBlank()) {
      core.addCreator(author);
    }
    core.setDescription(null, subject);
    core.setFormat("application/pdf");
    XMPBasicAdapter basic = XMPBasicSchema.getAdapter(all);
    basic.setCreatorTool(PROGRAM);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      XMPSerializer.writeXMPPacket(all, out, false);
    } catch (TransformerConfigurationException | SAXException e) {
      throw new IOException("the document's metadata cannot be set", e);
    }
    return out.toByteArray();
  }
}
