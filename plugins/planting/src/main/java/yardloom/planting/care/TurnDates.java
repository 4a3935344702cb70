package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.unit.Area;
import yardloom.planting.placing.Planting;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;

/**
 * The dates of crops that follow each other, from the date on which the first of their ground is
 * planted: each on its usual day, or later if the one before stands that long.
 */
final class TurnDates {
  private TurnDates() {}

  /**
   * @param planted days of planting of the kinds that stand first
   * @return the turn and date of each planting that follows another in time; none where the day of
   *     the first is not known
   */
  static Map<Planting, Dated> of(TurnPlan turns, Map<String, LocalDate> planted) {
    Map<Planting, Dated> dates = new LinkedHashMap<>();
    for (List<Turn> ground : turns.grounds()) {
      LocalDate day = planted.get(ground.get(0).planting().plant().name());
      for (int i = 1; i < ground.size() && day != null && ground.get(i).inTime(); i++) {
        Turn turn = ground.get(i);
        LocalDate usual = MonthDay.from(turn.planted()).atYear(day.getYear());
        usual = usual.isAfter(day) ? usual : usual.plusYears(1);
        LocalDate free =
            turn.planting().follows().get().line().on().isPresent()
                ? usual
                : day.plusDays(ground.get(i - 1).stands());
        day = free.isAfter(usual) ? free : usual;
        dates.put(turn.planting(), new Dated(turn, day));
      }
    }
    return dates;
  }

  /**
   * @param planted its date in the first year
   */
  record Dated(Turn turn, LocalDate planted) {
    /** Names the round up to it, whatever its days and however many beds carry it. */
    String key() {
      return key(turn.planting());
    }

    private static String key(Planting p) {
      String name = p.plant().name();
      String said =
          p.follows()
              .map(f -> f.line())
              .map(
                  l ->
                      l.on().map(d -> " on " + d).orElse("")
                          + l.days().map(d -> " of " + d + " days").orElse(""))
              .orElse("");
      String before = p.follows().map(f -> "-after-" + key(f.before())).orElse("");
      return CareYears.slug(name + said) + before;
    }

    /** The kind that stood on its ground before it. */
    String before() {
      return turn.planting().follows().orElseThrow().before().plant().name();
    }

    Area ground() {
      return turn.planting().ground().area();
    }
  }
}
