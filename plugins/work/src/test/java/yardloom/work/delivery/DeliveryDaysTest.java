package yardloom.work.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import yardloom.work.delivery.DeliveryDays.Load;
import yardloom.work.delivery.DeliveryDays.Time;

/** When heaps are tipped, by hand and as a law. */
class DeliveryDaysTest {
  private static final Delivery.When FIRST = Delivery.When.FIRST_THING;

  /**
   * 38 cu yd in four days are 9.5 a day. 5 of compost are gone after 5 / 9.5 = 0.53 of the first
   * day, 8.5 after 0.89: too late for a truck, so the chips come on the second morning. 18.5 take
   * 1.95 days, a few minutes short of the third morning; 28.5 take three.
   */
  @Test
  void oneSpot_heapsComeOneAfterTheOther() {
    assertEquals(
        List.of(
            new Time(0, FIRST, false),
            new Time(0, Delivery.When.AFTER_NOON, true),
            new Time(1, FIRST, true),
            new Time(2, FIRST, true),
            new Time(3, FIRST, true)),
        DeliveryDays.of(
            List.of(
                new Load("drive", 5),
                new Load("drive", 3.5),
                new Load("drive", 10),
                new Load("drive", 10),
                new Load("drive", 9.5)),
            0,
            4));
  }

  /**
   * A phase from 0.3 to 1.7 of its days: the first heap comes before noon of the first, and 9 of 14
   * cu yd are spread 0.9 days later, at 1.2.
   */
  @Test
  void phaseThatBeginsWithinADay_hasItsFirstTruckThen() {
    assertEquals(
        List.of(
            new Time(0, Delivery.When.BEFORE_NOON, false),
            new Time(1, Delivery.When.BEFORE_NOON, true)),
        DeliveryDays.of(List.of(new Load("drive", 9), new Load("drive", 5)), 0.3, 1.7));
  }

  /** 4 + 11 in two days are 7.5 a day: the second heap of chips waits for 4 + 7 = 11, day 1.47. */
  @Test
  void spotsOfTheirOwn_areFilledOnTheFirstMorning() {
    assertEquals(
        List.of(
            new Time(0, FIRST, false),
            new Time(0, FIRST, false),
            new Time(1, Delivery.When.BEFORE_NOON, true)),
        DeliveryDays.of(
            List.of(new Load("path", 4), new Load("drive", 7), new Load("drive", 4)), 0, 2));
  }

  /** In one day nothing is put off until a morrow: 9 of 10 are gone at 0.9. */
  @Test
  void lastDay_hasNoNextMorning() {
    assertEquals(
        List.of(new Time(0, FIRST, false), new Time(0, Delivery.When.AFTER_NOON, true)),
        DeliveryDays.of(List.of(new Load("drive", 9), new Load("drive", 1)), 0, 1));
    assertEquals(List.of(), DeliveryDays.of(List.of(), 0, 3));
  }

  /** No load is tipped more than half an hour before its ground is free, nor after the phase. */
  @Property
  void groundIsFree_whenAHeapIsTipped(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.5, max = 20) Double> volumes,
      @ForAll @Size(12) List<@IntRange(max = 2) Integer> spots,
      @ForAll @DoubleRange(min = 0, max = 0.75) double begins,
      @ForAll @DoubleRange(min = 0.1, max = 9) double lasts) {
    List<Load> loads = new ArrayList<>();
    for (int i = 0; i < volumes.size(); i++) {
      loads.add(new Load("spot " + spots.get(i), volumes.get(i)));
    }
    double pace = volumes.stream().mapToDouble(v -> v).sum() / lasts;
    Map<String, Double> gone = new TreeMap<>();
    double spread = 0;
    List<Time> times = DeliveryDays.of(loads, begins, begins + lasts);
    for (int i = 0; i < loads.size(); i++) {
      Time time = times.get(i);
      assertTrue(time.day() >= 0 && time.day() < begins + lasts);
      double latest =
          time.day()
              + switch (time.when()) {
                case FIRST_THING -> 0.5 / 8;
                case BEFORE_NOON -> 0.5;
                case AFTER_NOON -> 1 + 0.5 / 8;
              };
      double free = begins + gone.getOrDefault(loads.get(i).spot(), 0.0) / pace;
      assertTrue(free <= latest + 1e-9, free + " of " + time + " in " + loads);
      spread += loads.get(i).volume();
      gone.put(loads.get(i).spot(), spread);
    }
  }
}
