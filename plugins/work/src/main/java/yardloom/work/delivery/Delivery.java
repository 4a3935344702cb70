package yardloom.work.delivery;

import java.time.LocalDate;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Volume;

/**
 * One truckload.
 *
 * @param number from 1, in the order in which they come
 * @param item as the bill has it
 * @param phase in which it is spread
 * @param load what is tipped
 * @param spot the name of the drop zone; empty where the plan has none
 * @param day working day, counted from 1
 * @param date of that day, if the plan gives a start
 * @param when in the day
 * @param isAfterOther whether another heap lay on the spot in the phase
 */
public record Delivery(
    int number,
    String item,
    WorkPhase phase,
    Volume load,
    Optional<String> spot,
    int day,
    Optional<LocalDate> date,
    When when,
    boolean isAfterOther) {
  /** In the order in which they come. */
  public static final FactKey<Delivery> FACT =
      FactKey.many("work.deliveries", Delivery.class).called("deliveries").byPart();

  /** How tables say when: the time of day, and after what. */
  public String said() {
    boolean waits = isAfterOther && when != When.FIRST_THING;
    return when.title() + (waits ? ", once the heap is spread" : "");
  }

  /** The part of the day. */
  public enum When {
    FIRST_THING("first thing"),
    BEFORE_NOON("before noon"),
    AFTER_NOON("after noon");

    private final String title;

    When(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }
}
