package yardloom.program.export;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Lets all pages of a document use one copy of each font. Pages come from documents of their own,
 * each with the whole font, so that one name means the same letters under the same numbers.
 */
final class SharedFonts {
  private SharedFonts() {}

  static void in(PDDocument set) {
    Map<String, COSBase> first = new HashMap<>();
    for (PDPage page : set.getPages()) {
      COSDictionary fonts = page.getResources().getCOSObject().getCOSDictionary(COSName.FONT);
      if (fonts == null) {
        continue;
      }
      for (COSName key : List.copyOf(fonts.keySet())) {
        String name = fonts.getCOSDictionary(key).getNameAsString(COSName.BASE_FONT);
        COSBase shared = first.putIfAbsent(name, fonts.getItem(key));
        if (shared != null) {
          fonts.setItem(key, shared);
        }
      }
    }
  }
}
