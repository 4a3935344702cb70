package yardloom.planting.care;

import yardloom.kernel.diary.DiaryEntry;

/** Care as entries of a calendar. */
final class CareDiary {
  private CareDiary() {}

  static DiaryEntry entry(CareAct act) {
    String plants = String.join(", ", act.plants());
    return new DiaryEntry(
        act.key() + "-s" + act.season(),
        act.from(),
        act.until(),
        act.what() + (plants.isEmpty() ? "" : ": " + plants),
        act.how() + " (" + act.source().cite() + ")",
        act.season() == CareAct.GROWN ? act.every() : 0);
  }
}
