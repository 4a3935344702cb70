package yardloom.water.timetable.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * Zones that water by turns in one night, one valve open at a time: while the soil of one takes in
 * what stands on it, the next ones run. All zones keep one beat, the longest of any zone's turn
 * with its soak and of all first turns together, so no two turns meet.
 *
 * <p>References: cycle and soak, common practice; arithmetic of this class.
 *
 * @param from minutes from the first start of the night to that of each zone
 * @param rests minutes between an end and the next start of each zone; 0 where it has one turn
 * @param minutes from the first start to the last end
 */
public record TurnAbout(List<Integer> from, List<Integer> rests, int minutes) {
  /** Clocks of timers are set in such steps. */
  public static final int CLOCK_STEP = 5;

  /**
   * What one zone asks.
   *
   * @param soakMinutes that its soil needs after each turn but the last
   */
  public record Asked(TimerProgram program, int soakMinutes) {}

  public TurnAbout {
    from = List.copyOf(from);
    rests = List.copyOf(rests);
  }

  /** The night of zones in their order; no minutes where there are none. */
  public static TurnAbout of(List<Asked> zones) {
    int beat = 0;
    int first = 0;
    List<Integer> from = new ArrayList<>();
    for (Asked zone : zones) {
      from.add(first);
      first += onTheClock(zone.program().turnMinutes());
      if (zone.program().turns() > 1) {
        beat = Math.max(beat, onTheClock(zone.program().turnMinutes() + zone.soakMinutes()));
      }
    }
    beat = Math.max(beat, first);
    List<Integer> rests = new ArrayList<>();
    int last = 0;
    for (int z = 0; z < zones.size(); z++) {
      TimerProgram program = zones.get(z).program();
      rests.add(program.turns() > 1 ? beat - program.turnMinutes() : 0);
      last = Math.max(last, from.get(z) + (program.turns() - 1) * beat + program.turnMinutes());
    }
    return new TurnAbout(from, rests, last);
  }

  private static int onTheClock(int minutes) {
    return (minutes + CLOCK_STEP - 1) / CLOCK_STEP * CLOCK_STEP;
  }
}
