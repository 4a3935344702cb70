package yardloom.program.export;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import yardloom.sheet.compose.ComposedSheet;

/** Names the pages of a document after the sheets: bookmarks, page labels, language. */
final class PdfPages {
  private PdfPages() {}

  /**
   * @param set a page for each sheet, in their order
   */
  static void name(PDDocument set, List<ComposedSheet> sheets) throws IOException {
    PDDocumentCatalog catalog = set.getDocumentCatalog();
    PDDocumentOutline outline = new PDDocumentOutline();
    PDPageLabels labels = new PDPageLabels(set);
    for (int i = 0; i < sheets.size(); i++) {
      ComposedSheet sheet = sheets.get(i);
      PDPageFitDestination whole = new PDPageFitDestination();
      whole.setPage(set.getPage(i));
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(sheet.number() + " " + sheet.title());
      item.setDestination(whole);
      outline.addLast(item);
      PDPageLabelRange label = new PDPageLabelRange();
      label.setPrefix(String.valueOf(sheet.number()));
      labels.setLabelItem(i, label);
    }
    catalog.setDocumentOutline(outline);
    catalog.setPageLabels(labels);
    catalog.setPageMode(PageMode.USE_OUTLINES);
    catalog.setLanguage("en");
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    catalog.setViewerPreferences(shown);
  }
}
