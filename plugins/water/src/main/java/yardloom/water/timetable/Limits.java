package yardloom.water.timetable;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.TimeSpan;

/**
 * What holds the keys of a timer: how long the first plant to dry out can wait, and how long water
 * may run until it stands too deep. Both may be unknown, or no limit.
 */
record Limits(Optional<Derived<TimeSpan>> canWait, Optional<Derived<TimeSpan>> longestTurn) {
  static final Limits NONE = new Limits(Optional.empty(), Optional.empty());

  /** Of what a timer takes, whole days, turns and minutes. */
  static final Source SET =
      Source.commonPractice(
          "whole minutes on whole days, all in one night where it is long enough");

  /** Why there are so many turns on a day. */
  Derived<Integer> turns(int turns, int turnMinutes) {
    Derived.Builder why =
        Derived.by(
            longestTurn.isPresent()
                ? "whole turns, each no longer than the soil takes it, on a day of watering"
                : "whole turns on a day of watering: the soil takes it in one",
            SET);
    longestTurn.ifPresent(longest -> why.from("longest turn", longest));
    return why.from("time on a day of watering", TimeSpan.minutes(turns * turnMinutes))
        .gives(turns);
  }
}
