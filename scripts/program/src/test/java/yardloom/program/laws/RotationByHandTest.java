package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.table.Table;

/**
 * From plan text to the printed rotation: two years of unrelated vegetables between related ones
 * (L. Woodruff, Rotating vegetables by family, Cornell Cooperative Extension, 2021, read).
 */
class RotationByHandTest {
  private static final Plugins PLUGINS =
      PluginLoader.of(
          Drawn.plugins().all().stream()
              .filter(p -> Set.of("site", "planting").contains(p.info().id()))
              .toList());

  private static final String YARD =
      """
      plan 'Rotation', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      bed('K', rect(5.ft, 5.ft, 20.ft, 4.ft), use: 'annual') { plant 'tomato' ; plant 'kale' }
      bed('L', rect(5.ft, 15.ft, 20.ft, 4.ft), use: 'annual') { plant 'bush bean' }
      bed('M', rect(5.ft, 25.ft, 20.ft, 4.ft), use: 'annual') { plant '%s' }
      bed('P', rect(30.ft, 25.ft, 20.ft, 4.ft), use: 'perennial') { plant 'rhubarb' }
      """;

  private static Table table(String script) {
    return Drawn.study(script, PLUGINS).tables().stream()
        .filter(t -> t.id().equals("rotation"))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> row(Table table, int row) {
    return table.rows().get(row).stream().map(c -> c.value().orElseThrow().toString()).toList();
  }

  /** Four families on four plots move on by one each year; rhubarb stays and is not listed. */
  @Test
  void fourFamilies_moveOnByOnePlotAYear() {
    Table table = table(YARD.formatted("lettuce") + "rotation years: 3\n");
    assertEquals(
        List.of("K, part 1", "tomato (Solanaceae)", "kale (Brassicaceae)", "bush bean (Fabaceae)"),
        row(table, 0));
    assertEquals(
        List.of("M", "lettuce (Asteraceae)", "tomato (Solanaceae)", "kale (Brassicaceae)"),
        row(table, 3));
    assertEquals(4, table.rows().size());
  }

  /** Tomato and eggplant are one family and half of the plots: in year 3 one is back too soon. */
  @Test
  void familyOnHalfOfThePlots_isSaidToBeBackTooSoon() {
    Table table = table(YARD.formatted("eggplant") + "rotation years: 3\n");
    assertTrue(
        table.notes().stream().anyMatch(n -> n.startsWith("A family is back too soon on ")),
        table.notes().toString());
    Table calm = table(YARD.formatted("lettuce") + "rotation years: 4\n");
    assertTrue(calm.notes().stream().noneMatch(n -> n.contains("too soon")));
  }

  @Test
  void rotationOfOneYear_isRefused() {
    assertTrue(
        assertThrows(
                PlanException.class, () -> table(YARD.formatted("lettuce") + "rotation years: 1\n"))
            .getMessage()
            .contains("years must be 2 to 8, got 1"));
  }
}
