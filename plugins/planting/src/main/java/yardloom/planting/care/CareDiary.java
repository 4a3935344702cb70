package yardloom.planting.care;

import java.util.List;
import yardloom.kernel.diary.DiaryEntry;

/** Care as entries of a calendar. */
final class CareDiary {
  private CareDiary() {}

  /**
   * The entries of an act. Keys are made of what is done, for which kind or from which day, and the
   * year, never of a running number: another bed in the plan leaves those of all others alone, so
   * that a calendar read in again keeps its entries. Planting has one for each kind, which moves
   * with its visit.
   *
   * @param now the part of the plan that it belongs to; empty where there are none
   */
  static List<DiaryEntry> entries(CareAct act, String now) {
    if (act.task().act() == Act.PLANT) {
      return act.plants().stream()
          .map(kind -> entry(act, "plant-" + CareYears.slug(kind), kind, now))
          .toList();
    }
    return List.of(entry(act, act.yearlyKey(), String.join(", ", act.plants()), now));
  }

  /** The year, not the season of the garden, which may begin a year sooner with another bed. */
  private static String when(CareAct act) {
    return act.when().season() == CareAct.GROWN ? "grown" : "" + act.when().from().getYear();
  }

  private static DiaryEntry entry(CareAct act, String key, String plants, String now) {
    return new DiaryEntry(
        key + "-" + when(act) + (now.isEmpty() ? "" : "-" + CareYears.slug(now)),
        act.when().from(),
        act.when().until(),
        act.task().what()
            + (plants.isEmpty() ? "" : ": " + plants)
            + (now.isEmpty() ? "" : " (" + now + ")"),
        act.task().how() + " (" + act.task().source().cite() + ")",
        act.when().season() == CareAct.GROWN ? act.when().every() : 0);
  }
}
