package yardloom.facts;

import java.time.LocalDate;
import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Rain of every day of one or more whole years, from one station.
 *
 * @param days in order, without gaps, a year at least
 */
public record DailyRain(String station, Source source, List<Day> days) {
  /** What fell on one day. */
  public record Day(LocalDate date, Length rain) {}

  public DailyRain {
    days = List.copyOf(days);
  }

  /** How many years the series holds; not a whole number when leap days are among them. */
  public double years() {
    return days.size() / 365.25;
  }

  /** The most days in a row on which no rain was measured. */
  public int longestDrySpell() {
    int longest = 0;
    int run = 0;
    for (Day day : days) {
      run = day.rain().metres() > 0 ? 0 : run + 1;
      longest = Math.max(longest, run);
    }
    return longest;
  }
}
