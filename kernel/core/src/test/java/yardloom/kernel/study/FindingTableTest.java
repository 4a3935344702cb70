package yardloom.kernel.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;

class FindingTableTest {
  private static final Shape GROUND =
      Shape.rectangle(Point.metres(0, 0), Length.metres(2), Length.metres(1));

  private static Finding finding(Severity severity, String text) {
    return Finding.of("test.rule", severity, text, "mend it", Source.plan("plan"));
  }

  @Test
  void findings_ofAllKinds_keepTheNumbersOfTheWholeList() {
    Table table =
        FindingTable.of(
                List.of(
                    finding(Severity.ERROR, "too near"),
                    finding(Severity.NOTE, "only said"),
                    finding(Severity.NOTE, "shown").marking(GROUND)))
            .orElseThrow();
    assertEquals(
        List.of("(1)", "(3)"),
        table.rows().stream().map(row -> row.get(0).value().orElseThrow()).toList());
    assertEquals("error: too near", table.rows().get(0).get(1).value().orElseThrow());
  }

  @Test
  void findings_ofPlainNotesOnly_makeNoTable() {
    assertTrue(FindingTable.of(List.of(finding(Severity.NOTE, "only said"))).isEmpty());
  }
}
