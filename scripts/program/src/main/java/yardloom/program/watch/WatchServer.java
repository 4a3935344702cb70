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
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Serves the page of a watched plan to browsers of this machine. It listens on loopback only, at a
 * port the system chooses; every address holds a token of 128 random bits, the name of the host
 * must be this machine's, and a page that asks must be this one, so that no other site can reach it
 * through the browser. What is longer than the page ever sends is refused unread.
 */
final class WatchServer implements AutoCloseable {
  private static final long WAIT_MILLIS = 20_000;
  private static final int LARGEST_BODY = 4_096;
  private static final int LONGEST_QUESTION = 1_000;
  private static final String SCHEME = "http://";
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
    return SCHEME + "127.0.0.1:" + server.getAddress().getPort() + "/" + token + "/";
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      String path = String.valueOf(exchange.getRequestURI().getPath());
      String[] parts = path.split("/", 3);
      Headers said = exchange.getRequestHeaders();
      if (!isOurHost(said) || !isOurPage(said) || parts.length < 3 || !isToken(parts[1])) {
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
      why(exchange, query);
    } else if ((what.equals("set") || what.equals("view")) && post) {
      take(exchange, what.equals("set"));
    } else if (FILES.containsKey(what) && !post) {
      send(exchange, 200, FILES.get(what), file(what.isEmpty() ? "watch.html" : what));
    } else {
      send(exchange, 404, "text/plain", new byte[0]);
    }
  }

  private void why(HttpExchange exchange, String query) throws IOException {
    Optional<String> asked = decoded(query).filter(a -> a.length() <= LONGEST_QUESTION);
    byte[] why = asked.map(watching::why).orElse("").getBytes(StandardCharsets.UTF_8);
    send(exchange, asked.isPresent() ? 200 : 400, "text/plain; charset=utf-8", why);
  }

  private static Optional<String> decoded(String query) {
    try {
      return Optional.of(URLDecoder.decode(query, StandardCharsets.UTF_8));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private void take(HttpExchange exchange, boolean isValue) throws IOException {
    byte[] body = exchange.getRequestBody().readNBytes(LARGEST_BODY + 1);
    String text = new String(body, StandardCharsets.UTF_8);
    int equals = text.indexOf('=');
    if (body.length > LARGEST_BODY || isValue && equals <= 0) {
      send(exchange, body.length > LARGEST_BODY ? 413 : 400, "text/plain", new byte[0]);
      return;
    }
    if (isValue) {
      watching.set(text.substring(0, equals), text.substring(equals + 1));
    } else {
      watching.view(text);
    }
    send(exchange, 200, "text/plain", new byte[0]);
  }

  /** A browser names the page that sends or asks; a page of another site is not ours. */
  private boolean isOurPage(Headers headers) {
    String origin = headers.getFirst("Origin");
    return origin == null || origin.startsWith(SCHEME) && isOurs(origin.substring(SCHEME.length()));
  }

  private boolean isOurHost(Headers headers) {
    return isOurs(String.valueOf(headers.getFirst("Host")));
  }

  private boolean isOurs(String host) {
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
    // With no referrer at all some browsers would hide from us that it is our page that sends.
    headers.set("Referrer-Policy", "same-origin");
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
