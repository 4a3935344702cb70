package yardloom.program.watch;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Serves the page of a watched plan to browsers of this machine. It listens on loopback only, at a
 * port the system chooses; every address holds a token of 128 random bits, and the name of the host
 * must be this machine's, so that no other site can reach it through the browser.
 */
final class WatchServer implements AutoCloseable {
  private static final long WAIT_MILLIS = 20_000;
  private static final int LARGEST_BODY = 4_096;
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
          + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
  private static final Map<String, String> FILES =
      Map.of(
          "", "text/html; charset=utf-8",
          "watch.js", "text/javascript; charset=utf-8",
          "watch.css", "text/css; charset=utf-8");

  private final Watching watching;
  private final HttpServer server;
  private final ExecutorService threads;
  private final String token;

  WatchServer(Watching watching) throws IOException {
    this.watching = watching;
    byte[] random = new byte[16];
    new SecureRandom().nextBytes(random);
    token = HexFormat.of().formatHex(random);
    threads =
        Executors.newCachedThreadPool(
            work -> {
              Thread thread = new Thread(work, "watch page");
              thread.setDaemon(true);
              return thread;
            });
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext("/", this::answer);
    server.start();
  }

  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/" + token + "/";
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      String path = exchange.getRequestURI().getPath();
      String[] parts = path.split("/", 3);
      if (!isOurHost(exchange.getRequestHeaders()) || parts.length < 3 || !isToken(parts[1])) {
        send(exchange, 404, "text/plain", new byte[0]);
        return;
      }
      answer(exchange, parts[2]);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void answer(HttpExchange exchange, String what) throws IOException, InterruptedException {
    String query = String.valueOf(exchange.getRequestURI().getRawQuery());
    boolean post = exchange.getRequestMethod().equals("POST");
    if (what.equals("state") && !post) {
      byte[] state = watching.state(number(query), WAIT_MILLIS);
      send(exchange, 200, "application/json; charset=utf-8", state);
    } else if (what.equals("why") && !post) {
      String asked = URLDecoder.decode(query, StandardCharsets.UTF_8);
      byte[] why = watching.why(asked).getBytes(StandardCharsets.UTF_8);
      send(exchange, 200, "text/plain; charset=utf-8", why);
    } else if (what.equals("set") && post) {
      byte[] body = exchange.getRequestBody().readNBytes(LARGEST_BODY);
      String text = new String(body, StandardCharsets.UTF_8);
      int equals = text.indexOf('=');
      if (equals > 0) {
        watching.set(text.substring(0, equals), text.substring(equals + 1));
      }
      send(exchange, equals > 0 ? 200 : 400, "text/plain", new byte[0]);
    } else if (what.equals("view") && post) {
      byte[] body = exchange.getRequestBody().readNBytes(LARGEST_BODY);
      watching.view(new String(body, StandardCharsets.UTF_8));
      send(exchange, 200, "text/plain", new byte[0]);
    } else if (FILES.containsKey(what) && !post) {
      send(exchange, 200, FILES.get(what), file(what.isEmpty() ? "watch.html" : what));
    } else {
      send(exchange, 404, "text/plain", new byte[0]);
    }
  }

  private boolean isOurHost(Headers headers) {
    String host = String.valueOf(headers.getFirst("Host"));
    int port = server.getAddress().getPort();
    return host.equals("127.0.0.1:" + port) || host.equals("localhost:" + port);
  }

  private boolean isToken(String said) {
    return MessageDigest.isEqual(
        said.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  private static long number(String text) {
    return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : -1;
  }

  private static byte[] file(String name) throws IOException {
    try (InputStream in = WatchServer.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  private static void send(HttpExchange exchange, int code, String type, byte[] body)
      throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", type);
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cache-Control", "no-store");
    exchange.sendResponseHeaders(code, body.length == 0 ? -1 : body.length);
    exchange.getResponseBody().write(body);
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
