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
 */
public record Delivery(
    int number,
    String item,
    WorkPhase phase,
    Volume load,
    Optional<String> spot,
    int day,
    Optional<LocalDate> date,
    When when) {
  /** In the order in which they come. */
  public static final FactKey<Delivery> FACT =
      FactKey.many("work.deliveries", Delivery.class).called("deliveries").byPart();

  /** The part of the day, by the heap that lies there before. */
  public enum When {
    FIRST_THING("first thing"),
    BEFORE_NOON("before noon, once the heap is spread"),
    AFTER_NOON("after noon, once the heap is spread");

    private final String title;

    When(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }
}
