package yardloom.water.roof.formula;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * The roof that a half-round gutter drains to one downspout.
 *
 * <p>Of a table of widths at a fall of 1/16 in a foot; between widths by the power that fits both,
 * and by the root of the fall, as Manning's equation has it and as the other columns of the table
 * are.
 *
 * <p>References: International Plumbing Code, table of semicircular roof gutters, 1 in of rain an
 * hour (from memory, unverified).
 */
public final class GutterFlow {
  /** Rise over run: 1/16 in a foot. */
  public static final double USUAL_FALL = 1.0 / 192;

  /** One width and the plan area that it drains at 1 in of rain an hour and the usual fall. */
  private record Row(double inches, double squareFeet) {}

  private static final List<Row> ROWS =
      List.of(
          new Row(3, 680),
          new Row(4, 1440),
          new Row(5, 2500),
          new Row(6, 3840),
          new Row(7, 5520),
          new Row(8, 7960),
          new Row(10, 14400));

  public static final Length NARROWEST = Length.inches(ROWS.get(0).inches);
  public static final Length WIDEST = Length.inches(ROWS.get(ROWS.size() - 1).inches);

  private GutterFlow() {}

  /**
   * The plan area.
   *
   * @param width of the half circle, {@link #NARROWEST} to {@link #WIDEST}
   * @param fall rise over run, above 0
   * @param rainPerHour above 0
   * @throws IllegalArgumentException outside these
   */
  public static Area drained(Length width, double fall, Length rainPerHour) {
    double inches = width.inches();
    if (inches < NARROWEST.inches() - 1e-9
        || inches > WIDEST.inches() + 1e-9
        || !(fall > 0)
        || rainPerHour.inches() <= 0) {
      throw new IllegalArgumentException(
          "gutter " + width + ", fall " + fall + ", rain " + rainPerHour + " an hour");
    }
    int upper = 1;
    while (upper < ROWS.size() - 1 && ROWS.get(upper).inches < inches) {
      upper++;
    }
    Row low = ROWS.get(upper - 1);
    Row high = ROWS.get(upper);
    double power =
        StrictMath.log(high.squareFeet / low.squareFeet) / StrictMath.log(high.inches / low.inches);
    double atUsual = low.squareFeet * StrictMath.pow(inches / low.inches, power);
    return Area.squareFeet(atUsual * Math.sqrt(fall / USUAL_FALL) / rainPerHour.inches());
  }

  /** The narrowest of the table that drains a plan area; empty where none does. */
  public static Optional<Length> width(Area plan, double fall, Length rainPerHour) {
    return ROWS.stream()
        .map(r -> Length.inches(r.inches))
        .filter(w -> drained(w, fall, rainPerHour).times(1 + 1e-9).compareTo(plan) >= 0)
        .findFirst();
  }
}
