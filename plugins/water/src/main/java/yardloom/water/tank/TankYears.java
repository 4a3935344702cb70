package yardloom.water.tank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.roof.RoofShares;
import yardloom.water.tank.formula.TankBehaviour;
import yardloom.water.tank.formula.TankBehaviour.Order;
import yardloom.water.tank.formula.TankBehaviour.Step;

/**
 * A tank run day by day through all years in a row, after the first year once to fill it, and what
 * each year met of the need.
 */
final class TankYears {
  private static final double ENOUGH = 1 - 1e-9;
  private static final double DRY = 0.1;
  private static final double USUAL = 0.5;
  private static final double WET = 0.9;

  private final RainYears rain;
  private final Order order;
  private final double usable;
  private final List<Volume> inflows = new ArrayList<>();
  private final List<Volume> needs = new ArrayList<>();

  /** A roof, looked up once for all days. */
  private record Shed(Area area, double share) {}

  /**
   * Roofs without a tank of their own lead to one; needs are those of twelve months.
   *
   * @param usable share of a tank's water that its outlet and lines can use
   */
  TankYears(
      Plan plan,
      RainYears rain,
      List<Element.Roof> roofs,
      List<Volume> monthlyNeed,
      Length firstFlush,
      double screened,
      Order order,
      double usable) {
    this.rain = rain;
    this.order = order;
    this.usable = usable;
    List<Shed> sheds =
        roofs.stream()
            .map(r -> new Shed(r.shape().area(), RoofShares.of(plan, r).value()))
            .toList();
    boolean wasDry = true;
    for (RainYears.Year year : rain.years()) {
      for (int d = 0; d < year.rainMm().length; d++) {
        double mm = year.rainMm()[d];
        // Dirt gathers on dry days; on a second wet day the roof is clean.
        Length kept = Length.millimetres(Math.max(0, mm - (wasDry ? firstFlush.millimetres() : 0)));
        double litres =
            sheds.stream().mapToDouble(s -> s.area().deep(kept).litres() * s.share()).sum();
        inflows.add(Volume.litres(litres * screened));
        int month = year.month(d);
        needs.add(monthlyNeed.get(month).div(Months.days(month)));
        wasDry = mm <= 0;
      }
    }
  }

  int count() {
    return rain.years().size();
  }

  private int daysInYear() {
    return inflows.size() / count();
  }

  String how() {
    return rain.how();
  }

  Volume meanYield() {
    return sum(inflows).div(count());
  }

  Volume meanNeed() {
    return sum(needs).div(count());
  }

  TankCurve.Point point(Volume size) {
    int year = daysInYear();
    List<Step> steps = steps(size);
    double[] met = new double[count()];
    double used = 0;
    double spilt = 0;
    int lacking = 0;
    for (int y = 0; y < count(); y++) {
      double usedInYear = 0;
      for (int d = y * year; d < (y + 1) * year; d++) {
        usedInYear += steps.get(d).yield().litres();
        spilt += steps.get(d).spill().litres();
        lacking += isShort(steps, d) ? 1 : 0;
      }
      met[y] = usedInYear / sum(needs.subList(y * year, (y + 1) * year)).litres();
      used += usedInYear;
    }
    Arrays.sort(met);
    return new TankCurve.Point(
        size,
        Volume.litres(used / count()),
        quantile(met, DRY),
        quantile(met, USUAL),
        quantile(met, WET),
        Volume.litres(spilt / count()),
        (double) lacking / count());
  }

  /** What the tank gives month by month, and when it first falls short in a season. */
  TankYear year(TankPlan tank) {
    List<Step> steps = steps(tank.size());
    List<TankYear.Month> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(month(steps, m, tank));
    }
    boolean[] needed = new boolean[12];
    for (int m = 0; m < 12; m++) {
      needed[m] = months.get(m).need().litres() > 0;
    }
    TankSeasons seasons = new TankSeasons(needed);
    int year = daysInYear();
    for (int d = 0; d < steps.size(); d++) {
      seasons.day(rain.years().get(d / year).days().get(d % year), isShort(steps, d));
    }
    return new TankYear(
        tank,
        months,
        seasons.first(USUAL),
        seasons.first(DRY),
        seasons.backAgain(),
        seasons.count());
  }

  private TankYear.Month month(List<Step> steps, int month, TankPlan tank) {
    int year = daysInYear();
    double[] met = new double[count()];
    double[] stands = new double[count()];
    double need = 0;
    double given = 0;
    for (int y = 0; y < count(); y++) {
      double its = 0;
      double got = 0;
      double stored = 0;
      int days = 0;
      for (int d = y * year; d < (y + 1) * year; d++) {
        if (rain.years().get(y).month(d % year) == month) {
          its += needs.get(d).litres();
          got += steps.get(d).yield().litres();
          stored += steps.get(d).stored().ratioTo(tank.size());
          days++;
        }
      }
      met[y] = its <= 0 ? 1 : got / its;
      stands[y] = stored / days;
      need += its;
      given += got;
    }
    Arrays.sort(met);
    Arrays.sort(stands);
    return new TankYear.Month(
        Volume.litres(need / count()),
        Volume.litres(given / count()),
        quantile(met, DRY),
        quantile(met, USUAL),
        // What its outlet leaves is always in it.
        tank.body().height().times(1 - usable + quantile(stands, USUAL)));
  }

  /** All days, after the first year once to fill it. */
  private List<Step> steps(Volume size) {
    int year = daysInYear();
    List<Step> all =
        TankBehaviour.run(
            order, size.times(usable), Volume.ZERO, led(inflows, year), led(needs, year));
    return all.subList(year, all.size());
  }

  private boolean isShort(List<Step> steps, int day) {
    return steps.get(day).yield().litres() < needs.get(day).litres() * ENOUGH;
  }

  /** The first year comes before them all. */
  private static List<Volume> led(List<Volume> steps, int year) {
    List<Volume> all = new ArrayList<>(steps.subList(0, year));
    all.addAll(steps);
    return all;
  }

  /** Between ordered values; of fewer than ten years the outermost ones. */
  private static double quantile(double[] ordered, double share) {
    if (ordered.length < 10 && share != USUAL) {
      return share < USUAL ? ordered[0] : ordered[ordered.length - 1];
    }
    double at = share * (ordered.length - 1);
    int below = (int) Math.floor(at);
    int above = Math.min(ordered.length - 1, below + 1);
    return ordered[below] + (at - below) * (ordered[above] - ordered[below]);
  }

  private static Volume sum(List<Volume> parts) {
    return Volume.litres(parts.stream().mapToDouble(Volume::litres).sum());
  }
}
