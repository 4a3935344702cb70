package yardloom.kernel.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Holds rows of a list of outside figures against what the program gave, and keeps what it gave.
 *
 * <p>Beside {@code list.csv} lies {@code list.got}: for each row what the program gives, to one
 * figure more than the tolerance has. It is read by the page of truths and rewritten with {@code
 * -DupdateGolden=true}; otherwise a figure that has moved, even within its tolerance, fails here,
 * so that the page never prints what is no longer so.
 */
public final class OutsideRows {
  private static final String HEAD = "id,what,got,within";
  private static final int MOST_DECIMALS = 12;
  private static final int DIGITS = 6;
  private static final boolean UPDATES = Boolean.getBoolean("updateGolden");

  private final Path file;
  private final Map<String, String> kept = new TreeMap<>();

  private OutsideRows(Path file) {
    this.file = file;
    read(file).forEach(l -> kept.put(l.substring(0, secondComma(l)), l));
  }

  /** Of a list in the test resources, beside the class or at an absolute place. */
  public static OutsideRows of(Class<?> test, String list) {
    String place =
        list.startsWith("/")
            ? list.substring(1)
            : test.getPackageName().replace('.', '/') + "/" + list;
    return new OutsideRows(
        Path.of("src/test/resources", place.substring(0, place.length() - 4) + ".got"));
  }

  /** A row of one figure. */
  public void check(String id, double expected, double got, double tolerance) {
    check(id, "", expected, got, tolerance);
  }

  /** One figure of a row of several, or of one whose id stands more than once. */
  public void check(String id, String what, double expected, double got, double tolerance) {
    assertEquals(expected, got, tolerance, id + " " + what);
    BigDecimal exact = new BigDecimal(got);
    BigDecimal shown =
        tolerance > 0
            ? exact.setScale(decimals(tolerance), RoundingMode.HALF_EVEN)
            : exact.round(new MathContext(DIGITS));
    keep(id, what, plain(shown), plain(new BigDecimal(tolerance).round(new MathContext(2))));
  }

  /** A row whose text or whole number is to be met. */
  public void same(String id, String what, Object expected, Object got) {
    assertEquals(expected, got, id + " " + what);
    keep(id, what, String.valueOf(got), "0");
  }

  /** What was given, of a row that the test itself has held within something. */
  public void met(String id, String what, Object got, String within) {
    keep(id, what, String.valueOf(got), within);
  }

  private static int decimals(double tolerance) {
    return Math.max(0, Math.min(MOST_DECIMALS, 1 - (int) Math.floor(Math.log10(tolerance))));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private void keep(String id, String what, String got, String within) {
    String key = id + "," + what.replace(',', ';');
    String line = key + "," + got.replace(',', ';') + "," + within;
    if (UPDATES) {
      kept.put(key, line);
      write();
      return;
    }
    String known = kept.getOrDefault(key, key + ",nothing,");
    assertTrue(
        known.equals(line) || isNear(known, line),
        () -> "given was " + known + "; is " + line + ". Run with -DupdateGolden=true");
  }

  /** Another processor may round the last figure the other way. */
  private static boolean isNear(String known, String line) {
    try {
      BigDecimal was = new BigDecimal(known.split(",", -1)[2]);
      BigDecimal is = new BigDecimal(line.split(",", -1)[2]);
      BigDecimal unit = BigDecimal.ONE.movePointLeft(Math.max(was.scale(), is.scale()));
      return was.subtract(is).abs().compareTo(unit) <= 0;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static int secondComma(String line) {
    return line.indexOf(',', line.indexOf(',') + 1);
  }

  private static List<String> read(Path file) {
    try {
      return Files.exists(file)
          ? Files.readAllLines(file).stream().filter(l -> !l.equals(HEAD)).toList()
          : List.of();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void write() {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    lines.addAll(kept.values());
    try {
      Files.write(file, lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
