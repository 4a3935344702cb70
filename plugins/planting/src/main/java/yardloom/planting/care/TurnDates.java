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
        Turn before = ground.get(i - 1);
        Turn turn = ground.get(i);
        long stands = before.over().toEpochDay() - before.planted().toEpochDay();
        LocalDate usual = MonthDay.from(turn.planted()).atYear(day.getYear());
        usual = usual.isAfter(day) ? usual : usual.plusYears(1);
        LocalDate free =
            turn.planting().follows().get().line().on().isPresent() ? usual : day.plusDays(stands);
        day = free.isAfter(usual) ? free : usual;
        dates.put(turn.planting(), new Dated(turn, before, day));
      }
    }
    return dates;
  }

  /**
   * @param before what stood on its ground
   * @param planted its date in the first year
   */
  record Dated(Turn turn, Turn before, LocalDate planted) {
    Area ground() {
      return turn.planting().ground().area();
    }
  }
}
