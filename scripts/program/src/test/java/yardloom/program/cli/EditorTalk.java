package yardloom.program.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** The editor's side of the Language Server Protocol, by hand: LSP 3.17, "Base Protocol". */
final class EditorTalk implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final long WAIT_S = 90;

  private final OutputStream out;
  private final BlockingQueue<JsonNode> answers = new LinkedBlockingQueue<>();
  private final BlockingQueue<JsonNode> remarks = new LinkedBlockingQueue<>();
  private int id;

  EditorTalk(OutputStream out, InputStream in) {
    this.out = out;
    Thread ear = new Thread(() -> hear(in));
    ear.setDaemon(true);
    ear.start();
  }

  private void hear(InputStream in) {
    try {
      while (true) {
        int length = -1;
        for (String line = line(in); !line.isEmpty(); line = line(in)) {
          if (line.startsWith("Content-Length: ")) {
            length = Integer.parseInt(line.substring(16));
          }
        }
        JsonNode message = JSON.readTree(in.readNBytes(length));
        if (message.has("id")) {
          answers.add(message);
        } else if (message.at("/method").asText().equals("textDocument/publishDiagnostics")) {
          remarks.add(message.at("/params"));
        }
      }
    } catch (IOException | RuntimeException e) {
      // The server has gone.
    }
  }

  private static String line(InputStream in) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int c = in.read(); c != '\n'; c = in.read()) {
      if (c < 0) {
        throw new IOException("the end");
      }
      if (c != '\r') {
        line.append((char) c);
      }
    }
    return line.toString();
  }

  private void say(String message) throws IOException {
    byte[] body = message.getBytes(StandardCharsets.UTF_8);
    out.write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(body);
    out.flush();
  }

  private void tell(String method, String params) throws IOException {
    say("{\"jsonrpc\":\"2.0\",\"method\":\"" + method + "\",\"params\":" + params + "}");
  }

  private JsonNode ask(String method, String params) throws Exception {
    id++;
    say(
        "{\"jsonrpc\":\"2.0\",\"id\":"
            + id
            + ",\"method\":\""
            + method
            + "\",\"params\":"
            + params
            + "}");
    JsonNode answer = answers.poll(WAIT_S, TimeUnit.SECONDS);
    if (answer == null || answer.at("/id").asInt() != id || answer.has("error")) {
      throw new AssertionError(method + " was answered by " + answer);
    }
    return answer.at("/result");
  }

  private static String quoted(String text) throws IOException {
    return JSON.writeValueAsString(text);
  }

  JsonNode begin() throws Exception {
    JsonNode result =
        ask("initialize", "{\"processId\":null,\"rootUri\":null,\"capabilities\":{}}");
    tell("initialized", "{}");
    return result;
  }

  void open(String uri, String text) throws IOException {
    tell(
        "textDocument/didOpen",
        "{\"textDocument\":{\"uri\":"
            + quoted(uri)
            + ",\"languageId\":\"groovy\",\"version\":1,\"text\":"
            + quoted(text)
            + "}}");
  }

  void change(String uri, String text, int version) throws IOException {
    tell(
        "textDocument/didChange",
        "{\"textDocument\":{\"uri\":"
            + quoted(uri)
            + ",\"version\":"
            + version
            + "},\"contentChanges\":[{\"text\":"
            + quoted(text)
            + "}]}");
  }

  void save(String uri) throws IOException {
    tell("textDocument/didSave", "{\"textDocument\":{\"uri\":" + quoted(uri) + "}}");
  }

  /** The next remarks on a script. */
  JsonNode remarks(String uri) throws InterruptedException {
    JsonNode next = remarks.poll(WAIT_S, TimeUnit.SECONDS);
    if (next == null || !next.at("/uri").asText().equals(uri)) {
      throw new AssertionError("remarks on " + uri + ": " + next);
    }
    return next.at("/diagnostics");
  }

  /** How many remarks came that nobody has read. */
  int marked() {
    return remarks.size();
  }

  private static String at(String uri, int line, int column) throws IOException {
    return "{\"textDocument\":{\"uri\":"
        + quoted(uri)
        + "},\"position\":{\"line\":"
        + line
        + ",\"character\":"
        + column
        + "}}";
  }

  Set<String> labels(String uri, int line, int column) throws Exception {
    Set<String> labels = new TreeSet<>();
    ask("textDocument/completion", at(uri, line, column))
        .forEach(item -> labels.add(item.at("/label").asText()));
    return labels;
  }

  JsonNode hover(String uri, int line, int column) throws Exception {
    return ask("textDocument/hover", at(uri, line, column));
  }

  static String text(JsonNode hover) {
    return hover.at("/contents/value").asText();
  }

  void leave() throws Exception {
    ask("shutdown", "null");
    tell("exit", "null");
    close();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
