package yardloom.program.export;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.FontWidths;
import yardloom.kernel.sheet.ComposedSheet;
import yardloom.kernel.sheet.DemoYard;
import yardloom.kernel.sheet.Paper;
import yardloom.kernel.sheet.SheetComposer;
import yardloom.kernel.svg.SvgWriter;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.golden.Golden;

/** Guards the look of a whole sheet; the picture was looked at before it was kept. */
class DemoSheetGoldenTest {
  @Test
  void demoYard_onAnsiB_looksAsKept() {
    ComposedSheet sheet =
        new SheetComposer(FontWidths.shipped())
            .composeSet(List.of(DemoYard.request(Paper.named("ANSI B"), UnitSystem.US)))
            .get(0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(sheet, out);
    Golden.check("demo-yard-ansi-b.svg", out.toString(StandardCharsets.UTF_8));
  }
}
