package yardloom.kernel.source;

import java.util.Objects;

/**
 * The origin of a number, formula or rule, as it is printed beside results.
 *
 * @param title the publication's title, or what is claimed for a fact without a publication
 * @param publisher the issuing body or author; empty only for common practice
 * @param year the year of publication, 0 when unknown or not applicable
 * @param locator table, page, equation or section within the publication; may be empty
 * @param standing how far the value may be trusted
 */
public record Source(String title, String publisher, int year, String locator, Standing standing) {

  /** How a value stands to its source. */
  public enum Standing {
    /** Seen in the named publication or in a text that quotes it. */
    READ,
    /** Worked out from the named publication's formula. */
    COMPUTED,
    /** Recalled and not verified; printed so, and never the only proof of a result. */
    MEMORY,
    /** A fact of the trade that no publication is named for. */
    COMMON_PRACTICE,
    /** Given by the person who wrote the plan. */
    PLAN
  }

  public Source {
    Objects.requireNonNull(standing);
    if (title.isBlank()) {
      throw new IllegalArgumentException("a source needs a title");
    }
    if (publisher.isBlank() && standing != Standing.COMMON_PRACTICE && standing != Standing.PLAN) {
      throw new IllegalArgumentException("source \"" + title + "\" needs a publisher");
    }
  }

  /** A publication in which the value was seen. */
  public static Source read(String title, String publisher, int year, String locator) {
    return new Source(title, publisher, year, locator, Standing.READ);
  }

  /** A publication whose formula the value follows from. */
  public static Source computed(String title, String publisher, int year, String locator) {
    return new Source(title, publisher, year, locator, Standing.COMPUTED);
  }

  /** A publication that is remembered to say so; unverified. */
  public static Source memory(String title, String publisher, int year, String locator) {
    return new Source(title, publisher, year, locator, Standing.MEMORY);
  }

  /** A fact of the trade without a publication. */
  public static Source commonPractice(String what) {
    return new Source(what, "", 0, "", Standing.COMMON_PRACTICE);
  }

  /** Something the plan's author states. */
  public static Source plan(String what) {
    return new Source(what, "", 0, "", Standing.PLAN);
  }

  /**
   * What stands behind {@code source:} where a text will do: a publication as it is, a text as what
   * the plan's author states.
   *
   * @throws IllegalArgumentException if it is neither, or a blank text
   */
  public static Source given(Object source) {
    if (source instanceof Source publication) {
      return publication;
    }
    if (source instanceof CharSequence text) {
      return plan(text.toString());
    }
    boolean plain = source instanceof Number;
    throw new IllegalArgumentException(
        "a source is a text or a `publication`; got " + (plain ? source : "something else"));
  }

  /** One line for tables, notes and appendices. */
  public String cite() {
    StringBuilder text = new StringBuilder(title);
    if (!publisher.isBlank()) {
      text.append(", ").append(publisher);
    }
    if (year != 0) {
      text.append(", ").append(year);
    }
    if (!locator.isBlank()) {
      text.append(", ").append(locator);
    }
    return switch (standing) {
      case READ, COMPUTED -> text.toString();
      case MEMORY -> text + " (from memory, unverified)";
      case COMMON_PRACTICE -> text + " (common practice, no source)";
      case PLAN -> text + " (given in the plan)";
    };
  }
}
