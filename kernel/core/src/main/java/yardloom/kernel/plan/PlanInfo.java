package yardloom.kernel.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import yardloom.kernel.unit.UnitSystem;

/**
 * What stands in the title block. All of it is input; no clock or account is read.
 *
 * @param id lower-case name used for the output folder
 * @param date the date of issue as the author writes it, may be empty
 * @param revision the mark of the newest revision, may be empty
 * @param revised the day of that revision, where it is known
 */
public record PlanInfo(
    String id,
    String title,
    String client,
    String author,
    String date,
    String revision,
    UnitSystem units,
    String currency,
    Optional<LocalDate> revised) {

  /** One whose revision has no date. */
  public PlanInfo(
      String id,
      String title,
      String client,
      String author,
      String date,
      String revision,
      UnitSystem units,
      String currency) {
    this(id, title, client, author, date, revision, units, currency, Optional.empty());
  }

  /** The day of issue, where {@link #date} is one of ISO 8601. */
  public Optional<LocalDate> issued() {
    return day(date);
  }

  /** The day that {@code said} names, if it is one of ISO 8601, such as {@code 2026-04-02}. */
  public static Optional<LocalDate> day(String said) {
    try {
      return Optional.of(LocalDate.parse(said));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The same at another revision. */
  public PlanInfo revised(String mark, LocalDate on) {
    return new PlanInfo(id, title, client, author, date, mark, units, currency, Optional.of(on));
  }
}
