package yardloom.program.export;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.golden.Golden;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.DemoSheet;
import yardloom.sheet.compose.SheetComposer;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.svg.SvgWriter;

/** Guards the look of a whole sheet; the picture was looked at before it was kept. */
class DemoSheetGoldenTest {
  @Test
  void demoYard_onAnsiB_looksAsKept() {
    ComposedSheet sheet =
        new SheetComposer(FontWidths.shipped())
            .composeSet(List.of(DemoSheet.request(Paper.named("ANSI B"), UnitSystem.US)))
            .get(0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(sheet, out);
    Golden.check("demo-yard-ansi-b.svg", out.toString(StandardCharsets.UTF_8));
  }
}
