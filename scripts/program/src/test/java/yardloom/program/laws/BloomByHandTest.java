package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;

/**
 * From plan text to the printed days of bloom. The offsets are the catalogue's, recalled and so
 * marked there: apple 0 to 14 days after the last frost, a late variety a week later, chives 25 to
 * 45, garlic chives 100 to 130.
 */
class BloomByHandTest {
  private static final Plugins PLUGINS =
      PluginLoader.of(
          Drawn.plugins().all().stream()
              .filter(p -> !Set.of("sun", "materials", "work", "water").contains(p.info().id()))
              .toList());

  private static String yard(String lastFrost) {
    return """
    plan 'Bloom by hand', units: 'us'
    site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
    frost last: '%s', first: '10-14', source: 'demo figures'
    lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
    bed('Herbs', rect(5.ft, 5.ft, 12.ft, 4.ft), use: 'perennial') { plant 'chives'; plant 'garlic chives' }
    bed('Annuals', rect(5.ft, 15.ft, 12.ft, 4.ft), use: 'annual') { plant 'lettuce' }
    tree('One', point(40.ft, 30.ft), crown: 9.ft, height: 9.ft, leaf: 'deciduous', standing: false) {
      species 'apple (semi-dwarf)'
    }
    tree('Two', point(60.ft, 30.ft), crown: 9.ft, height: 9.ft, leaf: 'deciduous', standing: false) {
      species 'apple (semi-dwarf)'
      variety 'Someone', blooms: 'late'
    }
    """
        .formatted(lastFrost);
  }

  private static List<String> rows(String lastFrost) {
    Outcome outcome = Drawn.study(yard(lastFrost), PLUGINS);
    Table table =
        outcome.tables().stream().filter(t -> t.id().equals("bloom")).findFirst().orElseThrow();
    return table.rows().stream()
        .map(
            r ->
                r.get(0).value().get()
                    + " "
                    + r.get(1).value().get()
                    + " "
                    + r.get(2).value().get())
        .toList();
  }

  /** The last frost on 10 April: 20 days of April, 31 of May, 30 of June and 31 of July follow. */
  @Test
  void lastFrostOn10April_days() {
    assertEquals(
        List.of(
            "apple (semi-dwarf) --04-10 --04-24",
            "apple (semi-dwarf), late --04-17 --05-01",
            "chives --05-05 --05-25",
            "garlic chives --07-19 --08-18"),
        rows("04-10"));
  }

  /** Where no temperatures are known, bloom follows the frost day for day. */
  @ParameterizedTest
  @CsvSource({"04-11, 1", "05-03, 23", "03-22, -19"})
  void frostMoves_bloomMovesAsFar(String frost, int days) {
    List<String> usual = rows("04-10");
    List<String> moved = rows(frost);
    assertFalse(usual.isEmpty());
    assertEquals(usual.size(), moved.size());
    for (int i = 0; i < usual.size(); i++) {
      String[] was = usual.get(i).split(" (?=--)");
      String[] is = moved.get(i).split(" (?=--)");
      assertEquals(was[0], is[0]);
      assertEquals(day(was[1]).plusDays(days), day(is[1]));
      assertEquals(day(was[2]).plusDays(days), day(is[2]));
    }
  }

  private static LocalDate day(String text) {
    return MonthDay.parse(text).atYear(2025);
  }
}
