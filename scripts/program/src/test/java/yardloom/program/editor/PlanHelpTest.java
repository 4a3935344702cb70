package yardloom.program.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.vocab.Word;
import yardloom.program.words.Lists;

/** What an editor is told, with the pointer at {@code ‸}. */
class PlanHelpTest {
  private static final Plugins PLUGINS =
      PluginLoader.of(PluginLoader.find(PlanHelpTest.class.getClassLoader()));

  private static final PlanHelp HELP = new PlanHelp(PLUGINS);

  private static final String BED =
      "plan 'P', units: 'us'\nbed('kitchen', rect(0.ft, 0.ft, 9.ft, 4.ft), use: 'annual') {\n";

  private static Set<String> offered(String script) {
    int at = script.indexOf('‸');
    return HELP.suggestions(script.replace("‸", ""), at).all().stream()
        .map(Suggestion::label)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String told(String script) {
    int at = script.indexOf('‸');
    return HELP.explanation(script.replace("‸", ""), at).orElse("");
  }

  private static Set<String> words(String block) {
    return PLUGINS.lexicon().all().stream()
        .filter(w -> w.scope().getSimpleName().equals(block))
        .map(Word::name)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void statement_ofThePlan_offersItsWordsAndThoseOfTheLanguage() {
    for (String start : List.of("‸", "plan 'P'\n‸", "plan 'P'\n  be‸", "def a = 4.ft; ‸")) {
      Set<String> offered = offered(start);
      assertTrue(offered.containsAll(words("PlanScope")), start);
      assertTrue(offered.containsAll(Set.of("param", "include", "fileText")), start);
      assertFalse(offered.contains("plant"), start);
    }
  }

  @Test
  void statement_inABlock_offersTheWordsOfThatBlock() {
    for (String start :
        List.of(
            BED + "  ‸",
            BED + "  dr‸\n}\n",
            BED + "  // it's a comment\n  /* } */ ‸",
            BED + "  3.times { ‸ } }",
            BED + "  ['kale', 'chard'].each { kind -> ‸",
            "def b = bed 'x', rect(0.ft, 0.ft, 9.ft, 4.ft), {\n‸",
            "bed 'x',\n  rect(0.ft, 0.ft, 9.ft, 4.ft),\n  use: 'annual', {\n ‸")) {
      Set<String> offered = offered(start);
      assertTrue(offered.containsAll(words("BedScope")), start + offered);
      assertFalse(offered.contains("tree"), start);
    }
    assertTrue(offered(BED + "}\n‸").contains("tree"));
    assertFalse(offered(BED + "}\n‸").contains("drip"));
  }

  @Test
  void argument_offersOptionsNotYetGiven_andShapes() {
    Set<String> offered = offered(BED + "  drip emitter: 0.9.gph, ‸\n}");
    assertTrue(offered.containsAll(Set.of("spacing", "rowSpacing", "bore")), offered::toString);
    assertFalse(offered.contains("emitter"));
    assertTrue(offered("bed('x', ‸").containsAll(Set.of("rect", "polygon", "use")));
    assertTrue(offered("def w = 4.ft\nbed('x', rect(0.ft, 0.ft, ‸").contains("w"));
  }

  @Test
  void choice_isOfferedWithAndWithoutMarks() {
    assertTrue(
        offered("bed('x', circle(0.ft), use: '‸').").containsAll(Set.of("annual", "perennial")));
    Suggestion bare =
        HELP.suggestions("plan 'P', units: ", 17).all().stream()
            .filter(s -> s.label().equals("metric"))
            .findFirst()
            .orElseThrow();
    assertEquals("'metric'", bare.insert());
    assertTrue(offered(BED + "  drip compensating: ‸").containsAll(Set.of("true", "false")));
  }

  @Test
  void text_offersRowsOfItsList() {
    assertTrue(offered(BED + "  plant '‸").containsAll(Set.of("kale", "tomato")));
    assertTrue(offered("climate '‸'").contains("urbana-il"));
    assertEquals(Set.of(), offered("note '‸'"));
  }

  @Test
  void number_offersUnits_butPropertiesAndCommentsNothing() {
    assertTrue(offered("bed('x', rect(0.‸").containsAll(Set.of("ft", "inch", "sqm", "gph")));
    assertTrue(offered("def a = 2.5.f‸").contains("ft"));
    assertEquals(Set.of(), offered("def b = name.‸"));
    assertEquals(Set.of(), offered("// be‸"));
    assertEquals(Set.of(), offered("/* be‸"));
  }

  @Test
  void pointer_explainsWordOptionUnitAndRow() {
    assertTrue(told(BED + "  dr‸ip emitter: 0.9.gph").contains("Lays dripline in the bed"));
    assertTrue(told(BED + "  drip emit‸ter: 0.9.gph").contains("flow of one outlet"));
    assertTrue(told(BED + "  drip emitter: 0.9.g‸ph").contains("unit of flow"));
    assertTrue(told(BED + "  plant 'ka‸le'").contains("**kale** (plants)"));
    assertTrue(told("par‸am('w', 4.ft, 'width')").contains("--set"));
    // A word of another block is none here.
    assertEquals("", told("dr‸ip emitter: 0.9.gph"));
    assertEquals("", told("def x = nothi‸ng"));
  }

  @Test
  void lists_ofArguments_areThere() {
    Set<String> lists = new TreeSet<>(Lists.names());
    PLUGINS.all().forEach(p -> p.catalogues().forEach(c -> lists.add(c.name())));
    for (DataRow row : DataTable.shipped(PlanHelp.class, "rows.csv").rows()) {
      assertTrue(lists.contains(row.text("list")), row::toString);
      assertTrue(
          PLUGINS.lexicon().all().stream()
              .filter(w -> w.name().equals(row.text("word")))
              .flatMap(w -> w.parameters().stream())
              .anyMatch(p -> p.name().equals(row.text("parameter"))),
          row.text("word") + " " + row.text("parameter"));
    }
  }

  /** Every word's own example: the word is explained where it stands, and its options are. */
  @Test
  void everyWord_isExplainedInItsBlock() {
    for (Word word : PLUGINS.lexicon().all()) {
      String opener =
          PLUGINS.lexicon().all().stream()
              .filter(w -> w.inner().isPresent() && w.inner().get() == word.scope())
              .map(w -> w.name() + " 'x', {\n")
              .findFirst()
              .orElse("");
      String script = opener + word.name();
      String told = HELP.explanation(script, script.length()).orElse("");
      assertTrue(told.contains(word.signature()), word.name() + ": " + told);
      for (Word.Parameter option : word.options()) {
        String asked = script + " " + option.name() + ": 1";
        assertTrue(
            HELP.explanation(asked, script.length() + 2).orElse("").contains(option.help()), asked);
      }
    }
  }

  /** Whatever is typed, nothing is thrown and what is replaced ends at the pointer. */
  @Property(tries = 500, seed = "14")
  void anyText_isAnswered(@ForAll String typed, @ForAll @IntRange(max = 60) int at) {
    String script = BED + typed;
    int place = Math.min(script.length(), BED.length() + at);
    PlanHelp.Suggestions found = HELP.suggestions(script, place);
    assertTrue(found.start() >= 0 && found.start() <= place);
    HELP.explanation(script, place);
  }
}
