package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.vocab.Lexicon;
import yardloom.program.words.BuiltIn;
import yardloom.program.words.WordIndex;

/** A designer asks in the trade's words, not in ours. */
class WordsSearchTest {
  private static final Lexicon LEXICON = Toolkit.load().plugins().lexicon();

  @ParameterizedTest
  @CsvSource({
    "barrel, roof",
    "rain barrel, roof",
    "espalier, trellis",
    "espalier, trained",
    "wall, fence",
    "catalogue, species",
    "price list, priceBook",
    "driveway, paving",
    "faucet, tap",
    "raised bed, frame",
    "anything else, item",
    "suppress, accept",
    "septic, drainField",
    "wage, labourRate",
    "csv, fileText",
    "Cistern, item",
    "walls, fence",
    "coordinates, plantAt",
    "bore, pipeSize",
    "tubes, pipeSizes",
    "filters, headPart",
    "pressure loss, headParts",
    "weather station, climateBook",
    "topsoil, bulkMaterial",
    "bulk, bulkMaterials",
    "gravel, layer",
    "straw, layer",
    "tray, stockForms",
    "phase, stage",
    "orchard, trained",
    "pump, headPart",
    "permit, localCheck",
    "estimate, priceBook",
    "companion plants, guild",
    "privacy screen, hedge",
    "sidewalk, path",
    "stump, task",
    "grading, levels",
    "deer, fence",
  })
  void topic_findsItsWordAmongTheFirstFive(String asked, String word) {
    List<String> found =
        new WordIndex(LEXICON).search(asked).stream().limit(5).map(f -> f.name()).toList();
    assertTrue(found.contains(word), asked + " finds " + found);
  }

  /** Data that leads nowhere is found here, not by a designer. */
  @Test
  void everyOtherName_standsForWordsThatExist() {
    Set<String> known = new TreeSet<>(LEXICON.names());
    BuiltIn.ALL.forEach(b -> known.add(b.name()));
    DataTable names = DataTable.shipped(WordIndex.class, "other-names.csv");
    assertTrue(names.rows().size() > 80);
    for (var row : names.rows()) {
      for (String word : row.text("for").split(";")) {
        assertTrue(known.contains(word), row.text("asked") + " stands for " + word);
      }
      List<String> found =
          new WordIndex(LEXICON).search(row.text("asked")).stream().map(f -> f.name()).toList();
      assertTrue(found.containsAll(Arrays.asList(row.text("for").split(";"))), row.text("asked"));
    }
  }

  private static String words(String... asked) {
    String[] all = new String[asked.length + 1];
    all[0] = "words";
    System.arraycopy(asked, 0, all, 1, asked.length);
    Run run = Run.in(Path.of("."), all);
    assertEquals(ExitCode.FINE, run.code(), run.err());
    return run.out();
  }

  @Test
  void lists_areThereByName() {
    assertTrue(words("units").contains("sqm      m²       also m2, m²"));
    assertTrue(words("prices").contains("wood-chip mulch        invented 0, 15, 35; unit yd3"));
    assertTrue(words("tasks", "unit:yd3").contains("fill frames and raised beds"));
    assertTrue(words("materials").contains("weight 480, 600, 720 lb/cu yd"));
    assertTrue(words("rules").contains("  site.bed-reach"));
    assertTrue(words("tables").contains("  materials-cost"));
    assertTrue(words("builtins").contains("include(name, parameter: …)"));
    assertTrue(words("param").contains("--set"));
    assertTrue(words("rain", "barrel").contains("These speak of it:"));
    String all = words();
    for (String list : List.of("units", "prices", "plants", "climates", "soils", "include")) {
      assertTrue(all.contains(list), list);
    }
  }

  /** Names of rows are found though no word speaks of them; spellings of units too. */
  @ParameterizedTest
  @CsvSource({
    "tomato, tomato, plants",
    "carrots, carrot, plants",
    "urbana-il, urbana-il, climates",
    "litre, L, units",
    "apple, apple (semi-dwarf), plants"
  })
  void rowOfAList_isFoundByItsName(String asked, String row, String list) {
    String said = words(asked.split(" "));
    assertTrue(
        said.contains(String.format("  %-22s words %s\n", row, list)), asked + " says " + said);
  }

  @Test
  void whatNothingSpeaksOf_isWrongUseWithTheLists() {
    Run run = Run.in(Path.of("."), "words", "zeppelin");
    assertEquals(ExitCode.USE, run.code());
    assertTrue(run.err().contains("Lists are builtins, climates"), run.err());
  }
}
