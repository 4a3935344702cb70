package yardloom.program.cli;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.program.watch.Watching;

/**
 * Measures by the clock what somebody at the page of `watch` waits for: from the save of the script
 * with a moved bed, its compiling included, until the page has the sheet in view and until it has
 * all. Part of {@link RedrawBenchmark}.
 */
final class WatchedRedraws implements AutoCloseable {
  private static final Pattern VERSION = Pattern.compile("\"version\":([0-9]+)");

  /** What only a whole picture says, not the sheet that comes ahead of it. */
  private static final String WHOLE = "\"elements\":";

  private final HttpClient page = HttpClient.newHttpClient();
  private final Path script;
  private final Watching watching;
  private String seen = "-1";

  WatchedRedraws(Path script, String inView) throws IOException, InterruptedException {
    this.script = script;
    watching =
        new Watching(
            script, script.getParent(), Map.of(), WatchCommand.drawer(Toolkit.load(), script));
    ask(HttpRequest.newBuilder(at("view")).POST(HttpRequest.BodyPublishers.ofString(inView)));
    state();
  }

  /** Prints each of {@code times} redraws and the medians of the later half. */
  void run(int times, IntFunction<String> moved) throws IOException, InterruptedException {
    List<Double> first = new ArrayList<>();
    List<Double> whole = new ArrayList<>();
    for (int i = 1; i <= times; i++) {
      String next = moved.apply(i);
      long began = System.nanoTime();
      Files.writeString(script, next);
      String state = state();
      double viewed = since(began);
      while (!state.contains(WHOLE)) {
        state = state();
      }
      double all = since(began);
      System.out.printf(Locale.ROOT, "watched: in view %.0f ms, all %.0f ms%n", viewed, all);
      if (i > times / 2) {
        first.add(viewed);
        whole.add(all);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "page by the clock, median: in view %.0f ms, all %.0f ms%n",
        median(first),
        median(whole));
  }

  private static double since(long began) {
    return (System.nanoTime() - began) / 1e6;
  }

  private static double median(List<Double> all) {
    return all.stream().sorted().skip(all.size() / 2).findFirst().orElseThrow();
  }

  /** The next state that is newer than the one seen last. */
  private String state() throws IOException, InterruptedException {
    String before = seen;
    String state;
    do {
      state = ask(HttpRequest.newBuilder(at("state?" + before)));
      Matcher version = VERSION.matcher(state);
      if (version.find()) {
        seen = version.group(1);
      }
    } while (seen.equals(before));
    return state;
  }

  private URI at(String what) {
    return URI.create(watching.address() + what);
  }

  private String ask(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<String> answer = page.send(request.build(), HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() != 200) {
      throw new IOException("the watched page answers " + answer.statusCode());
    }
    return answer.body();
  }

  @Override
  public void close() {
    watching.close();
  }
}
