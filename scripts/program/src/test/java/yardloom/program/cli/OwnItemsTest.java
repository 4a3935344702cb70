package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What nothing else counts, from script to printed tables. Nothing but own items is in this yard,
 * so that every figure is theirs.
 */
class OwnItemsTest {
  private static final String LOT =
      """
      plan 'Own', units: 'us'
      work crew: 2, hoursPerDay: 4, start: '2026-09-07', visits: 1
      lot([point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 40.ft), point(0.ft, 40.ft)])
      price 'labour', 30.money, per: 'h'
      """;

  private static final String SCRIPT =
      LOT
          + """
          item 'cistern, 5000 gal', count: 2, price: 3900.money, hours: 9, phase: 'head'
          item 'drain rock', amount: 3.5.yd3, per: 'ft3', price: 2.money, hours: 0.06, phase: 'earth',
            source: publication('Rock by the foot', by: 'quarry', year: 2024, seen: 'read')
          task 'carry the old shed out', hours: 6, phase: 'earth'
          itemBook fileText('items.csv'), name: 'items.csv'
          labourBook fileText('labour.csv')
          """;

  @TempDir private static Path dir;

  private static Map<String, String> files;

  @BeforeAll
  static void draw() throws IOException {
    Files.writeString(
        dir.resolve("items.csv"),
        "item,count,unit,price,hours,phase\nbench,3,,180,0.5,finish\nrope,40,feet,,,finish\n");
    Files.writeString(
        dir.resolve("labour.csv"),
        "task,unit,low,likely,high\nvisit through the first season,piece,2,3,5\n");
    files = drawn("own", SCRIPT);
  }

  private static Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  private static List<String> rows(String table) {
    return files.get("tables/" + table + ".csv").replace('\u00a0', ' ').lines().skip(1).toList();
  }

  /** 3.5 cu yd are 94.5 cu ft: 94.5 × 0.06 = 5.67 h; cisterns 2 × 9, benches 3 × 0.5. */
  @Test
  void labour_isTheirsByPhase() {
    assertEquals(
        List.of(
            "\"call for the marks, photograph them\",Mark utilities,1,,0.3,0.5,1.0",
            "carry the old shed out,Earthwork,1,,6.0,6.0,6.0",
            "install drain rock,Earthwork,3.50,yd3,5.7,5.7,5.7",
            "\"install cistern, 5000 gal\",Head assembly,2,,18.0,18.0,18.0",
            "install bench,Finish mulch,3,,1.5,1.5,1.5",
            "visit through the first season,Establish,1,,2.0,3.0,5.0",
            "\"all, hours of one person\",,,,33.4,34.7,37.2"),
        rows("materials-labour"));
  }

  /** 2 × 3900, 94.5 × 2, 3 × 180; labour 0.5 + 6 + 5.67 + 18 + 1.5 + 3 = 34.67 h at 30. */
  @Test
  void cost_isCountTimesPrice() {
    List<String> likely = rows("materials-cost").stream().map(OwnItemsTest::itemAndLikely).toList();
    assertEquals(
        List.of(
            "\"cistern, 5000 gal\" 7800",
            "drain rock 189",
            "bench 540",
            "labour 1040",
            "total 9569"),
        likely);
    assertTrue(files.get("findings.txt").contains("No price is known for rope"));
  }

  private static String itemAndLikely(String row) {
    int end = row.startsWith("\"") ? row.indexOf('"', 1) + 1 : row.indexOf(',');
    return row.substring(0, end) + " " + row.substring(end + 1).split(",")[0];
  }

  /**
   * Earthwork 11.67 h of 8 a day from Thursday the 10th, since the marks take three days from
   * Monday the 7th: 3.67 h are left for Friday the 11th, when the cisterns' 18 h begin. With them
   * 21.67 h, or 2.7 days, are full on Tuesday the 15th, when the benches come. Ordered a week
   * ahead.
   */
  @Test
  void ordersAndPhases_followTheirPhase() {
    assertEquals(
        List.of(
            "Earthwork,drain rock,3.50,yd3,7,2026-09-03",
            "Head assembly,\"cistern, 5000 gal\",2,,7,2026-09-04",
            "Finish mulch,bench,3,,7,2026-09-08",
            "Finish mulch,rope,40.0,ft,7,2026-09-08"),
        rows("materials-orders-by-phase"));
  }

  @Test
  void table_saysWhoCountedIt() {
    assertEquals(
        List.of(
            "\"cistern, 5000 gal\",Head assembly,2,,piece,9.0,item of the plan (given in the plan)",
            "drain rock,Earthwork,3.50,yd3,cu ft,0.1,\"Rock by the foot, quarry, 2024\"",
            "carry the old shed out,Earthwork,1,,piece,6.0,task of the plan (given in the plan)",
            "bench,Finish mulch,3,,piece,0.5,items.csv (given in the plan)",
            "rope,Finish mulch,40.0,ft,ft,,items.csv (given in the plan)"),
        rows("work-own-items"));
  }

  /** A name or unit that prices nothing is told with what is near, never dropped in silence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "price 'rop', 1.money, per: 'ft' | Did you mean `rope`?",
        "price 'any own item', 1.money | Did you mean `any own items`?",
        "price 'bench seat', 1.money | There is 'bench'.",
        "price 'rope', 1.money | 'rope' is ordered by a length",
      })
  void priceForNothing_isAFindingWithWhatIsNear(String line, String said) throws IOException {
    String findings = drawn("odd", SCRIPT + line).get("findings.txt");
    assertTrue(findings.contains(said), findings);
    assertTrue(findings.contains("odd.groovy:11:1"), findings);
    assertFalse(files.get("findings.txt").contains("work.price-names"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "item 'x', phase: 'haed' | Did you mean `head`?",
        "item 'x', phase: 'head', count: 1.5 | whole number from 1 to 1000000",
        "item 'x', phase: 'head', amount: 3.ft, per: 'gal' | one of ch, cm, ft, inch",
        "item 'x', phase: 'head', count: 2, amount: 3.ft, per: 'ft' | not both",
        "item 'x', phase: 'head', low: 2.money | goes a likely `price:`",
        "item 'x', phase: 'head', price: 2.money, low: 3.money | must rise",
        "item 'bench', phase: 'head' ; item 'bench', phase: 'earth' | already given at",
        "task 'x', phase: 'head', hours: 0 | more than 0 hours",
        "itemBook 'item,count,unit,price,hours,phase\\nx,2,furlong,,,head' | item book:2:5",
        "labourBook 'task,unit,low,likely,high\\ncut edges,ft,1,2,3' | Did you mean `cut edge`?",
        "labourBook 'task,unit,low,likely,high\\ncut edge,gal,1,2,3' | no unit for this rate",
      })
  void whatCannotBe_isRefusedWithTheWayOut(String line, String said) throws IOException {
    Files.writeString(dir.resolve("bad.groovy"), LOT + line);
    Run run = Run.in(dir, "check", "bad.groovy");
    assertEquals(ExitCode.PLAN, run.code(), run.out() + run.err());
    assertTrue(run.err().contains(said), run.err());
    assertTrue(run.err().contains("bad.groovy:5:"), run.err());
  }
}
