package yardloom.program.starter;

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
        .matcher(NewFiles.template(name().toLowerCase(Locale.ROOT) + ".txt"))
        .replaceAll(units == UnitSystem.US ? "$1" : "$2")
        .replace("plan '‹title›'", "plan '" + said + "'")
        .replace("‹title›", title)
        .replace("‹file›", file);
  }
}
