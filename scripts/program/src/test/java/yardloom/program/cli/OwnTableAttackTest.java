package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;

/** Tables of a plan's own rows, written by an enemy: each is refused with its row, in no time. */
class OwnTableAttackTest {
  private static final String MONTHS = "jan,feb,mar,apr,may,jun,jul,aug,sep,oct,nov,dec";

  /** By word: a header and a row with NAME and NUMBER in it. */
  private static final Map<String, String> TABLES = tables();

  private static final Toolkit TOOLKIT = Toolkit.load();

  @TempDir private Path dir;

  private static Map<String, String> tables() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("pipeSizes", "size,bore_mm\nNAME,NUMBER");
    tables.put("headParts", "part,like,loss_psi,at_gpm\nNAME,filter,NUMBER,4");
    tables.put("bulkMaterials", "material,weighs_lb,each_yd3,load_yd3\nNAME,NUMBER,1,4");
    tables.put("plantBook", "plant,like,spread_in\nNAME,kale,NUMBER");
    tables.put("stockForms", "form,like,minutes\nNAME,plug,NUMBER");
    tables.put("itemBook", "item,count,unit,price,hours,phase\nNAME,NUMBER,piece,1,1,finish");
    tables.put("priceBook", "item,unit,low,likely,high\nNAME,yd3,NUMBER,NUMBER,NUMBER");
    tables.put("labourBook", "task,unit,low,likely,high\ncut edge,ft,NUMBER,NUMBER,NUMBER");
    tables.put(
        "climateBook",
        "climate,place,quantity,unit," + MONTHS + "\nNAME,x,max,degC" + ",NUMBER".repeat(12));
    return tables;
  }

  private PlanException refused(String word, String csv) throws IOException {
    Files.writeString(dir.resolve("table.csv"), csv);
    Path plan = dir.resolve("attack.groovy");
    Files.writeString(plan, "plan 'Attack', units: 'us'\n" + word + " fileText('table.csv')\n");
    return assertTimeout(
        Duration.ofSeconds(20),
        () -> assertThrows(PlanException.class, () -> TOOLKIT.read(plan, Map.of()), word + csv));
  }

  private static void assertPlaced(String word, PlanException e) {
    for (Problem problem : e.problems()) {
      assertFalse(problem.code() == ProblemCode.INTERNAL, word + problem);
      assertEquals(2, problem.place().line(), word + problem);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "Infinity",
        "-Infinity",
        "1e309",
        "-1e9",
        "1e18",
        "0x1p3x",
        "1_000",
        "١٢",
        "1;2",
        "=1+1",
        "../../x",
        "${1}",
        "<b>1</b>"
      })
  void numbersThatAreNone_areRefusedWithTheirRow(String number) throws IOException {
    for (var table : TABLES.entrySet()) {
      String csv = table.getValue().replace("NAME", "x").replace("NUMBER", number);
      PlanException e = refused(table.getKey(), csv);
      assertPlaced(table.getKey(), e);
      String said = e.problems().get(0).message();
      assertTrue(said.contains(":2"), table.getKey() + ": " + said);
    }
  }

  /** Names that break a line, steer a terminal, turn the writing or fill a sheet; or are none. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"a\nb\"",
        "a\tb",
        "a\u001b[31mb",
        "a\u0000b",
        "a\u2028b",
        "a\u202eb",
        "a\u2067b",
        "",
        "\" \""
      })
  void namesThatAreNone_areRefusedWithTheirRow(String name) throws IOException {
    for (var table : TABLES.entrySet()) {
      if (!table.getKey().equals("climateBook")) {
        String csv = table.getValue().replace("cut edge", "NAME").replace("NUMBER", "20");
        PlanException e = refused(table.getKey(), csv.replace("NAME", name));
        assertPlaced(table.getKey(), e);
        String said = e.problems().get(0).message();
        assertTrue(said.contains(":2"), table.getKey() + ": " + said);
      }
    }
  }

  @Test
  void namesLongerThanALine_areRefused() throws IOException {
    for (String word : List.of("pipeSizes", "headParts", "plantBook", "stockForms", "itemBook")) {
      String csv = TABLES.get(word).replace("NUMBER", "20").replace("NAME", "x".repeat(61));
      assertPlaced(word, refused(word, csv));
    }
    // A price is for a line of the bill, which puts the names of several things together.
    String prices = TABLES.get("priceBook").replace("NUMBER", "20");
    assertPlaced("priceBook", refused("priceBook", prices.replace("NAME", "x".repeat(201))));
  }

  /** Header alone, no columns, a column twice, a quote that never ends, columns of nobody's. */
  @ParameterizedTest
  @ValueSource(strings = {"", ",", "\"", "a,a\n1,2", "class,metaClass\nx,y", "\u0000", "\u202e"})
  void tablesThatAreNone_areRefused(String csv) throws IOException {
    for (String word : TABLES.keySet()) {
      assertPlaced(word, refused(word, csv));
    }
  }

  /** As many rows as a file may hold: told of at once, not compared with each other. */
  @Test
  void tablesWithoutEnd_areStopped() throws IOException {
    for (var table : TABLES.entrySet()) {
      String[] lines = table.getValue().split("\n");
      List<String> rows = new ArrayList<>(List.of(lines[0]));
      int most = (1 << 20) / (lines[1].length() + 8);
      for (int i = 0; i < most - 100; i++) {
        rows.add(lines[1].replace("NAME", "n" + i).replace("NUMBER", "3"));
      }
      PlanException e = refused(table.getKey(), String.join("\n", rows));
      assertPlaced(table.getKey(), e);
      assertTrue(
          e.problems().get(0).message().contains("at most 2,000 rows"),
          table.getKey() + e.problems().get(0));
    }
  }
}
