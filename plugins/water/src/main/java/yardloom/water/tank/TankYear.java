package yardloom.water.tank;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * What a tank of the plan gives month by month, and when the tap takes over; by the same days as
 * its curve.
 *
 * @param months January to December
 * @param toTap the day on which it first falls short, in the middle one of all seasons; empty if it
 *     does not then
 * @param early that day in the driest of ten seasons, the worst of fewer
 * @param back the day after the last on which it falls short, in the middle one of all seasons
 * @param seasons how many were run
 */
public record TankYear(
    TankPlan tank,
    List<Month> months,
    Optional<MonthDay> toTap,
    Optional<MonthDay> early,
    Optional<MonthDay> back,
    int seasons) {
  /** The year of each tank of the plan. */
  public static final FactKey<TankYear> KEY =
      FactKey.many("water.tank-year", TankYear.class).called("what tanks give by month");

  /** From here on the tank is said to water the month, below the other the tap. */
  private static final double NEARLY_ALL = 0.95;

  private static final double NEXT_TO_NOTHING = 0.10;

  /**
   * One month.
   *
   * @param need in a mean year
   * @param given of it in a mean year
   * @param dry share of the need that is met in the driest of ten years, the worst of fewer
   * @param usual in the middle one
   * @param water how deep it stands in the tank, the mean of the month's days in the middle year
   */
  public record Month(Volume need, Volume given, double dry, double usual, Length water) {}

  public TankYear {
    months = List.copyOf(months);
  }

  /** Where the water of a usual month comes from. */
  private enum From {
    NONE_NEEDED,
    TANK,
    TAP,
    TANK_THEN_TAP,
    BOTH
  }

  private From from(int month) {
    Month its = months.get(month);
    if (its.need().litres() <= 0) {
      return From.NONE_NEEDED;
    }
    if (its.usual() >= NEARLY_ALL) {
      return From.TANK;
    }
    if (its.usual() < NEXT_TO_NOTHING) {
      return From.TAP;
    }
    return toTap
        .filter(day -> day.getMonthValue() == month + 1 && day.getDayOfMonth() > 1)
        .map(day -> From.TANK_THEN_TAP)
        .orElse(From.BOTH);
  }

  /** Whether a usual month is the tap's alone. */
  public boolean isByTap(int month) {
    return from(month) == From.TAP;
  }

  /** Where the water of a usual month comes from, in words; empty if none is needed. */
  public String source(int month) {
    return switch (from(month)) {
      case NONE_NEEDED -> "";
      case TANK -> "tank";
      case TAP -> "tap";
      case TANK_THEN_TAP -> "tank until about " + change() + ", then tap whenever it is empty";
      case BOTH -> "tank, tap whenever it is empty";
    };
  }

  /** The same where there is little room: "tank", "tap", "tank to 8 Jul" or "both". */
  public String shortly(int month) {
    return switch (from(month)) {
      case TANK_THEN_TAP -> "tank to " + change();
      case BOTH -> "both";
      default -> source(month);
    };
  }

  private String change() {
    return toTap.map(TableFormat::day).orElseThrow();
  }

  /** Whether it waters all that are named, by its `serves`. */
  public boolean serves(List<String> names) {
    return tank.drawing().serves().isEmpty() || tank.drawing().serves().containsAll(names);
  }
}
