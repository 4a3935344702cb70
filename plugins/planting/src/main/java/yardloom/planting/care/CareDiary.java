package yardloom.planting.care;

import yardloom.kernel.diary.DiaryEntry;

/** Care as entries of a calendar. */
final class CareDiary {
  private CareDiary() {}

  /**
   * @param now the part of the plan that it belongs to; empty where there are none
   */
  static DiaryEntry entry(CareAct act, String now) {
    String plants = String.join(", ", act.plants());
    return new DiaryEntry(
        act.key() + "-s" + act.season() + (now.isEmpty() ? "" : "-" + CareYears.slug(now)),
        act.from(),
        act.until(),
        act.what()
            + (plants.isEmpty() ? "" : ": " + plants)
            + (now.isEmpty() ? "" : " (" + now + ")"),
        act.how() + " (" + act.source().cite() + ")",
        act.season() == CareAct.GROWN ? act.every() : 0);
  }
}
