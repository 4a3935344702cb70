package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.plugin.JarMaker;

/** Plugins from a folder: announced, listed, left out; and what happens with broken ones. */
class PluginFolderTest {
  private static final String HEAD =
      """
      package outside;
      import java.util.*;
      import yardloom.kernel.check.*;
      import yardloom.kernel.fact.*;
      import yardloom.kernel.plan.*;
      import yardloom.kernel.scope.PlanScope;
      import yardloom.kernel.source.Source;
      import yardloom.kernel.spi.*;
      import yardloom.kernel.table.*;
      import yardloom.kernel.vocab.*;

      public final class Outside implements YardPlugin {
        @ID@
        public int spiLevel() { return Spi.LEVEL; }
        public List<Vocabulary> vocabularies() {
          return List.of(new Vocabulary("outside", List.of(OutsideWords.class)));
        }
        @BODY@
        public static final AttributeKey<String> KEY =
            new AttributeKey<>("outside.mark", String.class);
      """;

  private static final String ID =
      "public PluginInfo info() { return new PluginInfo(\"outside\", \"Outside\", \"2.3\"); }";

  private static final String TAIL =
      """
        public static final class OutsideWords {
          @Verb(help = "Marks the plan.", example = "outsideMark('x')")
          public static void outsideMark(
              PlanScope plan, @Arg(name = "text", help = "what it says") String text) {
            if (text.equals("break")) throw new UnsupportedOperationException("word at odds");
            plan.draft().attributes().add(Outside.KEY, text, plan.place());
          }
        }
        static final class Marks implements TableMaker {
          public String id() { return "outside-marks"; }
          public Set<FactKey<?>> reads() { return Set.of(); }
          public Table make(Plan plan, Facts facts) {
            Table.Builder table = Table.titled(id(), "Marks").column(Column.text("mark", "Mark"));
            plan.attributes().all(Outside.KEY).forEach(e -> table.row(Cell.text(e.value())));
            return table.build();
          }
        }
        static class Odd implements Check, TableMaker, Calculator {
          public String id() { return "outside.odd"; }
          public Set<FactKey<?>> reads() { return Set.of(); }
          public Set<FactKey<?>> explains() { return Set.of(); }
          public Set<FactKey<?>> gives() { return Set.of(); }
          public List<Finding> run(Plan plan, Facts facts) { throw new IllegalStateException("odd day"); }
          public Table make(Plan plan, Facts facts) { throw new IllegalStateException("odd day"); }
          public void compute(Plan plan, Facts in, Sink out) { throw new IllegalStateException("odd day"); }
        }
        static final class OddCheck extends Odd {}
      }
      """;

  private static final String PLAN =
      """
      plan 'Outside', units: 'us'
      lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
      """;

  @TempDir private Path dir;

  private Path jar(String id, String body, String leftOut) throws IOException {
    String source = HEAD.replace("@ID@", id).replace("@BODY@", body) + TAIL;
    return JarMaker.jar(dir.resolve("jars/outside.jar"), source, "outside.Outside", leftOut);
  }

  private Run draw(String more, String... options) throws IOException {
    Files.writeString(dir.resolve("yard.groovy"), PLAN + more);
    String[] all = new String[options.length + 8];
    String[] first = {"draw", "yard.groovy", "--out", "out", "--as", "csv", "--plugins", "jars"};
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(options, 0, all, first.length, options.length);
    return Run.in(dir, all);
  }

  private static final String TABLE =
      "public List<TableMaker> tables() { return List.of(new Marks()); }";

  @Test
  void pluginOfAFolder_isAnnouncedAndItsWordAndTableWork() throws IOException {
    Path jar = jar(ID, TABLE, "");
    Run run = draw("outsideMark 'seen'");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    assertEquals("with the plugin outside 2.3 from " + jar, run.err().strip());
    Map<String, String> files = Run.files(dir.resolve("out/yard"));
    assertEquals(List.of("mark", "seen"), files.get("tables/outside-marks.csv").lines().toList());
    Run list = Run.in(dir, "plugins", "--plugins", "jars");
    assertTrue(
        list.out().contains("outside 2.3  Outside (from " + jar + ", level 1: 1 word, 1 table)"),
        list.out());
  }

  @Test
  void leftOut_itsWordIsUnknown_andAnUnknownIdIsRefused() throws IOException {
    jar(ID, TABLE, "");
    Run run = draw("outsideMark 'seen'", "--without", "outside");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("plan has no `outsideMark`"), run.err());
    Run odd = draw("", "--without", "outsid");
    assertEquals(ExitCode.PLAN, odd.code());
    assertTrue(odd.err().contains("Did you mean `outside`?"), odd.err());
    Run shipped = draw("price 'x', 1.money", "--without", "work");
    assertTrue(shipped.err().contains("belongs to the plugin work, which is not loaded"));
  }

  @Test
  void noSuchFolder_isWrongUse() throws IOException {
    Run run = Run.in(dir, "plugins", "--plugins", "nowhere");
    assertEquals(ExitCode.USE, run.code());
    assertTrue(run.err().contains("there is none at nowhere"), run.err());
  }

  private void refused(String more, String... said) throws IOException {
    Run run = draw(more);
    assertEquals(ExitCode.PLAN, run.code(), run.out() + run.err());
    for (String text : said) {
      assertTrue(run.err().contains(text), text + " in " + run.err());
    }
    assertTrue(run.err().contains("outside.jar"), run.err());
    assertFalse(run.err().contains("report it with this script"), run.err());
    assertFalse(Files.exists(dir.resolve("out")), "nothing is written");
  }

  @Test
  void corruptJar_isNamed() throws IOException {
    Files.createDirectories(dir.resolve("jars"));
    Files.write(dir.resolve("jars/outside.jar"), new byte[] {'P', 'K', 3, 4, 9, 9, 9});
    refused("", "this jar cannot be read");
  }

  @Test
  void jarWithoutAPlugin_isNamed() throws IOException {
    JarMaker.jar(dir.resolve("jars/outside.jar"), "class Outside {}", "", "");
    refused("", "this jar holds no plugin");
  }

  @Test
  void missingClasses_areNamed() throws IOException {
    jar(ID, TABLE, "Outside.class");
    refused("", "the plugin outside.Outside cannot be made", "ClassNotFoundException");
    jar(ID, TABLE, "Marks");
    refused("", "the plugin outside broke in tables", "outside.Outside$Marks");
  }

  @Test
  void failingConstructor_isNamedWithItsCause() throws IOException {
    jar(ID, "public Outside() { throw new IllegalStateException(\"no tools\"); }", "");
    refused("", "cannot be made: IllegalStateException: no tools", "[PLUGIN_FAULT]");
  }

  @Test
  void badId_isNamed() throws IOException {
    jar(ID.replace("\"outside\"", "\"Out Side\""), "", "");
    refused("", "does not say who it is", "plugin id \"Out Side\"");
  }

  @Test
  void idOfAShippedPlugin_isRefused() throws IOException {
    jar(ID.replace("\"outside\"", "\"water\""), "", "");
    refused("", "the plugin water has the id of one of the program's own");
  }

  @Test
  void otherLevel_isRefused() throws IOException {
    String source = (HEAD + TAIL).replace("@ID@", ID).replace("@BODY@", "");
    JarMaker.jar(
        dir.resolve("jars/outside.jar"),
        source.replace("return Spi.LEVEL", "return 99"),
        "outside.Outside",
        "");
    Run run = draw("");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("plugin outside was built for level 99"), run.err());
  }

  @Test
  void throwingCalculator_endsTheRunWithItsName() throws IOException {
    jar(ID, "public List<Calculator> calculators() { return List.of(new Odd()); }", "");
    refused("", "the plugin outside broke in its calculator Odd: IllegalStateException: odd day");
  }

  @Test
  void throwingWord_isThePluginsFault() throws IOException {
    jar(ID, TABLE, "");
    refused("outsideMark 'break'", "broke in a word: UnsupportedOperationException: word at odds");
  }

  /** A check and a table cost their own output: the plan's is whole, and says what is missing. */
  @Test
  void throwingCheckAndTable_costTheirOwnOutputOnly() throws IOException {
    jar(
        ID,
        "public List<Check> checks() { return List.of(new OddCheck()); }"
            + " public List<TableMaker> tables() { return List.of(new Odd(), new Marks()); }",
        "");
    Run run = draw("outsideMark 'seen'");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    Map<String, String> files = Run.files(dir.resolve("out/yard"));
    assertTrue(
        files
            .get("findings.txt")
            .contains(
                "the check outside.odd of the plugin outside (outside.jar) broke and says nothing:"
                    + " IllegalStateException: odd day"),
        files.get("findings.txt"));
    assertTrue(
        files
            .get("tables/outside.odd.csv")
            .contains(
                "\"the table outside.odd broke, from outside.jar\",IllegalStateException: odd day"),
        files.get("tables/outside.odd.csv"));
    assertEquals(List.of("mark", "seen"), files.get("tables/outside-marks.csv").lines().toList());
  }
}
