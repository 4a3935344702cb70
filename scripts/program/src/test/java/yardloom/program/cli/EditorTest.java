package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static yardloom.program.cli.EditorTalk.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.cache.KeptDrawings;

/**
 * The Language Server Protocol as bytes: header and JSON-RPC 2.0 messages are written here by hand
 * from the specification (LSP 3.17, "Base Protocol"), not by the library that answers them.
 */
class EditorTest {
  private static final String YARD =
      "plan 'P', units: 'us'\r\n"
          + "lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft,"
          + " 60.ft)])\r\n"
          + "bed('kitchen', rect(8.ft, 36.ft, 24.ft, 4.ft), use: 'annual') {\r\n"
          + "  plant 'kale'\r\n"
          + "}\r\n";

  @TempDir private Path dir;

  private EditorTalk start(CompletableFuture<Integer> ended) throws Exception {
    PipedOutputStream toServer = new PipedOutputStream();
    PipedInputStream ofServer = new PipedInputStream(1 << 20);
    Console console =
        new Console(
            new PipedInputStream(toServer, 1 << 20),
            new PrintStream(new PipedOutputStream(ofServer), true, StandardCharsets.UTF_8),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            false);
    Thread server =
        new Thread(() -> ended.complete(Main.run(console, dir, () -> KeptDrawings.OFF, "editor")));
    server.setDaemon(true);
    server.start();
    return new EditorTalk(toServer, ofServer);
  }

  @Test
  void editor_isHelpedFromOpeningToLeaving() throws Exception {
    CompletableFuture<Integer> ended = new CompletableFuture<>();
    try (EditorTalk editor = start(ended)) {
      JsonNode can = editor.begin().at("/capabilities");
      assertTrue(can.has("completionProvider") && can.at("/hoverProvider").asBoolean());

      Path file = dir.resolve("corner yard.groovy");
      Files.writeString(file, YARD);
      String uri = file.toUri().toString();
      editor.open(uri, YARD);
      // Sides without a role are found at the lot, line 1 from 0; the climate is missing nowhere.
      JsonNode found = editor.remarks(uri);
      assertEquals(1, line(found, "site.side-role"), found::toString);
      assertEquals(0, line(found, "water.data"), found::toString);

      // "  plant 'kale'" is line 3; behind "  plant '" and behind "  ".
      assertTrue(editor.labels(uri, 3, 9).contains("tomato"));
      assertTrue(editor.labels(uri, 3, 2).contains("drip"));
      assertFalse(editor.labels(uri, 3, 2).contains("tree"));
      assertTrue(text(editor.hover(uri, 3, 4)).contains("Plants one kind in the bed"));

      // Typed, not saved: the place is marked, and the mark goes when it is mended.
      editor.change(uri, YARD.replace("plant 'kale'", "plnat 'kale'"), 2);
      JsonNode wrong = editor.remarks(uri);
      assertEquals(1, wrong.size(), wrong::toString);
      assertEquals(3, wrong.at("/0/range/start/line").asInt());
      assertEquals(2, wrong.at("/0/range/start/character").asInt());
      assertEquals(7, wrong.at("/0/range/end/character").asInt());
      assertEquals(1, wrong.at("/0/severity").asInt());
      assertTrue(wrong.at("/0/message").asText().contains("plant"), wrong::toString);
      editor.change(uri, YARD, 3);
      assertEquals(found, editor.remarks(uri));

      // Saved with a bed outside the lot: the finding is an error at the bed.
      String outside = YARD.replace("rect(8.ft", "rect(80.ft");
      Files.writeString(file, outside);
      editor.change(uri, outside, 4);
      editor.save(uri);
      JsonNode after = editor.remarks(uri);
      boolean marked = false;
      for (JsonNode each : after) {
        marked |= each.at("/severity").asInt() == 1 && each.at("/range/start/line").asInt() == 2;
      }
      assertTrue(marked, after::toString);

      editor.leave();
      assertEquals(ExitCode.FINE, ended.get(30, TimeUnit.SECONDS));
    }
  }

  /** Where the mark of a rule stands. */
  private static int line(JsonNode marks, String rule) {
    for (JsonNode each : marks) {
      if (each.at("/code").asText().equals(rule)) {
        return each.at("/range/start/line").asInt();
      }
    }
    return -1;
  }

  /**
   * A file of another trade, a file that is not there, an address that is none: no marks, no fault.
   */
  @Test
  void editor_ofOtherFiles_isLeftAlone() throws Exception {
    CompletableFuture<Integer> ended = new CompletableFuture<>();
    try (EditorTalk editor = start(ended)) {
      editor.begin();
      Path build = Files.writeString(dir.resolve("build.groovy"), "plugins { id 'x' }\n");
      editor.open(build.toUri().toString(), "plugins { id 'x' }\n");
      editor.open(dir.resolve("unsaved.groovy").toUri().toString(), YARD);
      editor.open("untitled:Untitled-1", YARD);
      editor.open("file:///%ZZ", YARD);
      assertTrue(editor.labels("untitled:Untitled-1", 3, 2).contains("drip"));
      assertTrue(editor.labels("untitled:Untitled-1", 99, 99).contains("bed"));
      assertTrue(editor.hover("file:///never-opened.groovy", 0, 0).isNull());
      assertEquals(0, editor.marked());
      editor.leave();
      assertEquals(ExitCode.FINE, ended.get(30, TimeUnit.SECONDS));
    }
  }

  /** Nothing that comes in stops the answers that follow, or prints a stack trace. */
  @Test
  void editor_thatTalksNonsense_isAnsweredByErrors() throws Exception {
    ByteArrayOutputStream asked = new ByteArrayOutputStream();
    for (String nonsense :
        new String[] {
          "{",
          "[]",
          "42",
          "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"textDocument/hover\"}",
          "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"rm -rf\",\"params\":{}}",
          "{\"jsonrpc\":\"2.0\",\"id\":3,\"method\":\"textDocument/completion\",\"params\":"
              + "{\"textDocument\":{\"uri\":\"x\"},\"position\":{\"line\":-1,\"character\":-1}}}",
          "{\"jsonrpc\":\"2.0\",\"id\":4,\"method\":\"shutdown\"}"
        }) {
      byte[] body = nonsense.getBytes(StandardCharsets.UTF_8);
      asked.writeBytes(
          ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      asked.writeBytes(body);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new ByteArrayInputStream(asked.toByteArray()),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false);
    int code = Main.run(console, dir, () -> KeptDrawings.OFF, "editor");
    String said = out.toString(StandardCharsets.UTF_8);
    assertEquals(ExitCode.FINE, code, said);
    assertTrue(said.contains("\"id\":4"), said);
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  /** An editor that dies without a word leaves no process behind. */
  @Test
  void editor_thatDies_endsTheServer() {
    Run run = Run.in(dir, "editor");
    assertEquals(ExitCode.FINDINGS, run.code());
    assertEquals("", run.out() + run.err());
  }
}
