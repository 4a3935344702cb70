package yardloom.program.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import yardloom.kernel.unit.UnitSystem;

/** A kind of yard to begin with. */
public enum Starter {
  /** A house lot with the garden behind the house. */
  YARD,
  /** A yard that falls. */
  SLOPE,
  /** A lot at a street corner. */
  CORNER,
  /** A small yard between walls. */
  COURTYARD;

  /** In the files the figures of both unit systems stand side by side: {@code ‹4.ft|1.2.m›}. */
  private static final Pattern EITHER = Pattern.compile("‹([^|›]*)\\|([^|›]*)›");

  /**
   * The script.
   *
   * @param title what the plan is called
   * @param file the script's file, as the commands in its comments name it
   */
  public String script(String title, String file, UnitSystem units) {
    String said = title.replace("\\", "\\\\").replace("'", "\\'");
    return EITHER
        .matcher(template())
        .replaceAll(units == UnitSystem.US ? "$1" : "$2")
        .replace("plan '‹title›'", "plan '" + said + "'")
        .replace("‹title›", title)
        .replace("‹file›", file);
  }

  private String template() {
    String name = name().toLowerCase(Locale.ROOT) + ".txt";
    try (InputStream in = Starter.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the starter " + name + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
