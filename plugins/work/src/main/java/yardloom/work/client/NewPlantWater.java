package yardloom.work.client;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.unit.Months;
import yardloom.work.phase.CareMonths;

/** How the client waters new plants, in one sentence that follows rain and need by month. */
final class NewPlantWater {
  private static final String FIRST =
      "New plants: water daily at first, then less, as the tables of the first weeks say; ";

  private NewPlantWater() {}

  static String of(CareMonths months) {
    return FIRST + later(months) + " Pull weeds.";
  }

  private static String later(CareMonths months) {
    if (!months.isKnown()) {
      return "later whenever the soil is dry a finger deep.";
    }
    if (months.dry().isEmpty()) {
      return "later in dry spells only.";
    }
    if (months.dry().size() == Month.values().length) {
      return "later all through the year: in no month does it rain as much as they need.";
    }
    return "later "
        + runs(months.dry())
        + ", when they need more than it rains, else in dry spells.";
  }

  /** Months in a row as "from May to September", across the new year too. */
  private static String runs(Set<Month> months) {
    List<String> said = new ArrayList<>();
    for (Month first : Month.values()) {
      if (months.contains(first) && !months.contains(first.minus(1))) {
        Month last = first;
        while (months.contains(last.plus(1))) {
          last = last.plus(1);
        }
        said.add(last == first ? "in " + name(first) : "from " + name(first) + " to " + name(last));
      }
    }
    return String.join(" and ", said);
  }

  private static String name(Month month) {
    return Months.fullName(month);
  }
}
