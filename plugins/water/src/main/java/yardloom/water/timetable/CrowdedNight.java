package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.Optional;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.TimeSpan;

/**
 * Waterings that are longer than a night, however they share it.
 *
 * @param when in words, such as {@code in July}
 * @param takes from the first start to the last end
 * @param has from the evening to shortly before sunrise
 */
public record CrowdedNight(String when, TimeSpan takes, TimeSpan has) {
  /** All of them. */
  public static final FactKey<CrowdedNight> KEY =
      FactKey.many("water.crowded-nights", CrowdedNight.class).called("crowded nights");

  /** What does not go into the night before a sunrise; empty where it does. */
  static Optional<CrowdedNight> of(String when, int minutes, Optional<LocalTime> sunrise) {
    return sunrise
        .map(Starts::room)
        .filter(room -> minutes > room)
        .map(room -> new CrowdedNight(when, TimeSpan.minutes(minutes), TimeSpan.minutes(room)));
  }
}
