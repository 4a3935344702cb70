package yardloom.planting.care;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.diary.DiaryEntry;

/** Care as entries of a calendar. */
final class CareDiary {
  private CareDiary() {}

  /** The entries of all acts, in the order of seasons. */
  static List<DiaryEntry> of(List<CareAct> acts, String now) {
    List<DiaryEntry> entries = new ArrayList<>();
    Set<String> begun = new HashSet<>();
    for (CareAct act : acts) {
      if (!act.when().isAllYear()) {
        entries.addAll(entries(act, now));
      } else if (begun.add(act.key())) {
        entries.add(begins(act, now));
      }
    }
    return entries;
  }

  /** What goes on all the year has its first day only, or it would lie over all days for good. */
  private static DiaryEntry begins(CareAct act, String now) {
    DiaryEntry first = entry(act, act.yearlyKey(), String.join(", ", act.plants()), now);
    return new DiaryEntry(
        first.key(),
        first.from(),
        first.from(),
        first.title() + ", all year from now on",
        first.text(),
        0);
  }

  /**
   * The entries of an act. Keys are made of what is done, for which kind or from which day, and the
   * year, never of a running number: another bed in the plan leaves those of all others alone, so
   * that a calendar read in again keeps its entries. Planting has one for each kind, which moves
   * with its visit.
   *
   * @param now the part of the plan that it belongs to; empty where there are none
   */
  private static List<DiaryEntry> entries(CareAct act, String now) {
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
