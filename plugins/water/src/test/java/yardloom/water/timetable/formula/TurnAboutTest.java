package yardloom.water.timetable.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TurnAboutTest {
  private static TurnAbout.Asked zone(int turns, int minutes, int soak) {
    return new TurnAbout.Asked(new TimerProgram(2, turns, minutes), soak);
  }

  /**
   * By hand: 3 turns of 12 minutes with 78 of soak (the public example of cycle and soak), 2 of 21
   * with 50, one of 33. The beat is 12 + 78 = 90; the others start when 15 and 15 + 25 minutes of
   * it are over. Last turn of the first zone: 180 to 192.
   */
  @Test
  void zonesRun_whileTheSoilOfOthersRests() {
    TurnAbout night = TurnAbout.of(List.of(zone(3, 12, 78), zone(2, 21, 50), zone(1, 33, 0)));
    assertEquals(List.of(0, 15, 40), night.from());
    assertEquals(List.of(78, 69, 0), night.rests());
    assertEquals(192, night.minutes());
  }

  /** 40 + 45 + 60 minutes of turns are longer than the soak of 30: the beat is 145. */
  @Test
  void manyZones_lengthenTheBeat() {
    TurnAbout night = TurnAbout.of(List.of(zone(2, 40, 30), zone(1, 45, 0), zone(1, 58, 0)));
    assertEquals(List.of(0, 40, 85), night.from());
    assertEquals(List.of(105, 0, 0), night.rests());
    assertEquals(185, night.minutes());
  }

  @Property(tries = 300, seed = "20261128")
  void noTwoTurnsMeet_andNoSoilRestsLess(
      @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 5) Integer> turns,
      @ForAll @IntRange(min = 1, max = 60) int minutes,
      @ForAll @IntRange(min = 0, max = 300) int soak) {
    List<TurnAbout.Asked> zones = new ArrayList<>();
    for (int z = 0; z < turns.size(); z++) {
      zones.add(zone(turns.get(z), minutes + 3 * z, soak + 7 * z));
    }
    TurnAbout night = TurnAbout.of(zones);
    boolean[] open = new boolean[night.minutes()];
    for (int z = 0; z < turns.size(); z++) {
      TimerProgram program = zones.get(z).program();
      assertTrue(program.turns() == 1 || night.rests().get(z) >= zones.get(z).soakMinutes());
      for (int turn = 0; turn < program.turns(); turn++) {
        int start = night.from().get(z) + turn * (program.turnMinutes() + night.rests().get(z));
        for (int m = start; m < start + program.turnMinutes(); m++) {
          assertTrue(!open[m], "two valves at minute " + m);
          open[m] = true;
        }
      }
    }
    assertTrue(open[0] && open[night.minutes() - 1]);
  }
}
