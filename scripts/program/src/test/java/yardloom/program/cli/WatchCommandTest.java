package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.study.Outcome;
import yardloom.program.watch.Watching;
import yardloom.sheet.compose.ComposedSheet;

class WatchCommandTest {
  private static final String PLAN =
      """
      plan 'Watched', units: 'us'
      def wide = param('wide', 4.ft, 'width of the bed')
      lot([point(0.ft, 0.ft), point(30.ft, 0.ft), point(30.ft, 50.ft), point(0.ft, 50.ft)])
      include 'part'
      bed 'kitchen', rect(5.ft, 20.ft, wide, 10.ft), use: 'perennial'
      """;

  @TempDir Path folder;

  private final HttpClient client = HttpClient.newHttpClient();
  private Path script;
  private Watching watching;

  @BeforeEach
  void watch() throws IOException {
    script = Files.writeString(folder.resolve("watched.groovy"), PLAN);
    Files.writeString(
        folder.resolve("part.groovy"),
        "path 'walk', line([point(3.ft, 2.ft), point(3.ft, 40.ft)]), width: 3.ft\n");
    watching = new Watching(script, folder, Map.of(), WatchCommand.drawer(Toolkit.load(), script));
  }

  @AfterEach
  void end() {
    watching.close();
  }

  private HttpResponse<String> get(String address) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString());
  }

  private JsonNode state(long seen) throws IOException, InterruptedException {
    return new ObjectMapper().readTree(get(watching.address() + "state?" + seen).body());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private static String area(JsonNode state) {
    for (JsonNode table : state.at("/picture/tables")) {
      if (table.get("id").asText().equals("beds")) {
        return table.at("/rows/0/2").asText();
      }
    }
    return "";
  }

  @Test
  void page_savedAndSet_followsThePlan() throws IOException, InterruptedException {
    JsonNode first = state(-1);
    assertEquals("40", area(first).replaceAll("\\.0$", ""), "4 ft × 10 ft");
    assertEquals("4 ft", first.at("/picture/parameters/0/value").asText());
    JsonNode sheet =
        first.at("/picture/sheets").findParents("title").stream()
            .filter(s -> s.get("title").asText().contains("Layout"))
            .findFirst()
            .orElseThrow();
    assertTrue(sheet.get("svg").asText().contains(">1/4\" = 1'-0\"<"), "the title block");
    assertEquals(1000 / 48.0, sheet.get("mmPerM").asDouble(), 1e-9, "a quarter inch for a foot");
    JsonNode bed =
        first.at("/picture/elements").findParents("id").stream()
            .filter(e -> e.get("name").asText().equals("kitchen"))
            .findFirst()
            .orElseThrow();
    assertTrue(bed.get("place").asText().endsWith("watched.groovy:5"), bed.toString());
    assertTrue(bed.get("line").asText().startsWith("bed 'kitchen'"), bed.toString());
    assertTrue(get(watching.address() + "why?area%20of%20kitchen").body().contains("area"));
    for (JsonNode table : first.at("/picture/tables")) {
      for (int row = 0; row < table.get("rows").size(); row++) {
        if (table.at("/rows/" + row + "/0").asText().equals("kitchen")) {
          String name = table.get("id").asText() + " / " + table.at("/names/" + row).asText();
          String why = get(watching.address() + "why?" + encoded(name)).body();
          assertTrue(!why.isBlank() && !why.contains("nothing"), name + ": " + why);
        }
      }
    }

    client.send(
        HttpRequest.newBuilder(URI.create(watching.address() + "set"))
            .POST(BodyPublishers.ofString("wide=3ft"))
            .build(),
        BodyHandlers.discarding());
    JsonNode set = state(first.get("version").asLong());
    assertEquals("30", area(set).replaceAll("\\.0$", ""), "3 ft × 10 ft");
    assertEquals("3ft", set.at("/settings/wide").asText());
    assertTrue(set.at("/picture/sheets/0").has("svg"), "the bed's sheet is another");
    JsonNode same = state(set.get("version").asLong() - 1);
    assertEquals(set.at("/picture/sheets"), same.at("/picture/sheets"));

    Files.writeString(folder.resolve("part.groovy"), "pathh 'walk'\n");
    JsonNode wrong = state(set.get("version").asLong());
    assertTrue(wrong.at("/problems/0/place").asText().endsWith("part.groovy:1"), wrong.toString());
    assertEquals("pathh 'walk'", wrong.at("/problems/0/line").asText());
    assertEquals("30", area(wrong).replaceAll("\\.0$", ""), "the last good picture stays");

    Files.writeString(folder.resolve("part.groovy"), "\n");
    Files.writeString(script, PLAN.replace("10.ft)", "12.ft)"));
    JsonNode mended = state(wrong.get("version").asLong());
    while (!area(mended).startsWith("36")) {
      mended = state(mended.get("version").asLong());
    }
    assertEquals(0, mended.get("problems").size());
  }

  /** What the whole picture waits for does not keep the sheet in view from the page. */
  @Test
  void sheetInView_isSentBeforeTheRestIsWorkedOut() throws Exception {
    watching.close();
    CountDownLatch seen = new CountDownLatch(1);
    Watching.Drawer real = WatchCommand.drawer(Toolkit.load(), script);
    watching =
        new Watching(
            script,
            folder,
            Map.of(),
            new Watching.Drawer() {
              @Override
              public Outcome study(
                  Map<String, String> values, String inView, Consumer<List<ComposedSheet>> first) {
                return real.study(
                    values,
                    inView,
                    pages -> {
                      first.accept(pages);
                      await(seen);
                    });
              }

              @Override
              public List<ComposedSheet> sheets(Outcome outcome) {
                return real.sheets(outcome);
              }
            });
    JsonNode before = state(-1);
    post("view", "layout");
    Files.writeString(script, PLAN.replace("10.ft)", "12.ft)"));
    JsonNode ahead = state(before.get("version").asLong());
    assertTrue(ahead.at("/picture/tables").isMissingNode(), "tables are not worked out yet");
    List<String> sent = new ArrayList<>();
    ahead
        .at("/picture/sheets")
        .forEach(s -> (s.has("svg") ? sent : new ArrayList<String>()).add(s.get("id").asText()));
    assertEquals(List.of("layout"), sent);
    seen.countDown();
    JsonNode whole = state(ahead.get("version").asLong());
    assertTrue(area(whole).startsWith("48"), "4 ft × 12 ft");
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void post(String what, String body) throws IOException, InterruptedException {
    client.send(
        HttpRequest.newBuilder(URI.create(watching.address() + what))
            .POST(BodyPublishers.ofString(body))
            .build(),
        BodyHandlers.discarding());
  }

  @Test
  void stranger_withoutTokenOrHost_getsNothing() throws IOException, InterruptedException {
    URI address = URI.create(watching.address());
    assertEquals(404, get("http://127.0.0.1:" + address.getPort() + "/").statusCode());
    assertEquals(
        404, get("http://127.0.0.1:" + address.getPort() + "/0123456789abcdef/").statusCode());
    assertEquals(404, get(watching.address() + "../secret").statusCode());
    HttpResponse<String> page = get(watching.address());
    assertEquals(200, page.statusCode());
    String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
    assertTrue(policy.startsWith("default-src 'none'"), policy);
    assertTrue(!policy.contains("unsafe") && !policy.contains("http"), policy);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
      // Another site's name that was made to lead here.
      String asked =
          "GET "
              + address.getPath()
              + " HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(asked.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(answer.startsWith("HTTP/1.1 404"), answer);
    }
  }

  private int posted(String what, String body, String origin) throws Exception {
    HttpRequest.Builder asked =
        HttpRequest.newBuilder(URI.create(watching.address() + what))
            .POST(BodyPublishers.ofString(body));
    if (!origin.isEmpty()) {
      asked.header("Origin", origin);
    }
    return client.send(asked.build(), BodyHandlers.discarding()).statusCode();
  }

  /** Another page gets nothing even if it has learnt the address; and it changes nothing. */
  @Test
  void otherPages_getNothing() throws Exception {
    long version = state(-1).get("version").asLong();
    String here = "http://127.0.0.1:" + URI.create(watching.address()).getPort();
    for (String origin : List.of("https://rebound.example", "null", here + "0", "file://")) {
      assertEquals(404, posted("set", "wide=3ft", origin), origin);
      assertEquals(404, posted("view", "layout", origin), origin);
    }
    assertEquals(version, state(-1).get("version").asLong());
    assertEquals(200, posted("view", "layout", here));
  }

  /** Whatever is sent, the page answers, keeps the last good picture and mends with the value. */
  @Test
  void hostileInputs_areRefusedOrToldOf() throws Exception {
    assertEquals(413, posted("set", "wide=" + "9".repeat(5_000), ""));
    assertEquals(413, posted("view", "x".repeat(1 << 20), ""));
    assertEquals(400, posted("set", "wide", ""));
    assertEquals(400, posted("set", "=3ft", ""));
    assertEquals(400, get(watching.address() + "why?" + "x".repeat(2_000)).statusCode());
    assertEquals(400, rawGet(watching.address() + "why?%zz"));
    assertEquals(200, get(watching.address() + "why?" + encoded("<b>\u001b[2J</b>")).statusCode());
    List<String> values = List.of("1e999ft", "NaNft", "System.exit(0)", "<b>", "\u001b[2J", "-4ft");
    for (String value : values) {
      assertEquals(200, posted("set", "wide=" + value, ""), value);
      JsonNode told = state(-1);
      assertTrue(told.get("problems").size() > 0, value);
      assertFalse(told.get("problems").toString().contains("INTERNAL"), told.toString());
      assertTrue(area(told).startsWith("40"), "the last good picture stays");
    }
    posted("set", "metaClass=1", "");
    assertTrue(state(-1).get("problems").size() > 0);
    posted("set", "metaClass=", "");
    posted("set", "wide=", "");
    assertEquals(0, state(-1).get("problems").size());
  }

  /** As it is written, which no well-made address is. */
  private int rawGet(String address) throws IOException {
    URI to = URI.create(watching.address());
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), to.getPort())) {
      String asked =
          "GET "
              + address.substring(address.indexOf(to.getPath()))
              + " HTTP/1.1\r\nHost: 127.0.0.1:"
              + to.getPort()
              + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(asked.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return Integer.parseInt(answer.split(" ")[1]);
    }
  }

  @Test
  void closed_answersNoMore() throws InterruptedException {
    URI address = URI.create(watching.address());
    watching.close();
    assertThrows(
        IOException.class,
        () -> new Socket(InetAddress.getLoopbackAddress(), address.getPort()).close());
  }

  /** The page itself, in a browser. */
  @Test
  void page_inABrowser_canBeUsedByKeyboardAndHasNoSeriousFinding()
      throws IOException, InterruptedException {
    String modules = String.valueOf(System.getenv("YARDLOOM_BROWSER_MODULES"));
    Path browser = Path.of("/usr/bin/chromium");
    assumeTrue(
        Files.isDirectory(Path.of(modules, "puppeteer-core")) && Files.exists(browser),
        "skipped: needs chromium, and puppeteer-core and axe-core in the folder that"
            + " YARDLOOM_BROWSER_MODULES names");
    Path said = folder.resolve("said.log");
    ProcessBuilder run =
        new ProcessBuilder(
            "node",
            Path.of("src/test/browser/watch.cjs").toAbsolutePath().toString(),
            watching.address(),
            script.toString(),
            Files.createDirectories(Path.of("target/watch")).toString());
    run.environment().put("NODE_PATH", modules);
    Process process = run.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertTrue(process.waitFor(5, TimeUnit.MINUTES), "the browser did not end");
    assertEquals("", Files.readString(said).strip());
    assertEquals(0, process.exitValue());
  }
}
