package yardloom.water.tank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.DailyRain;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.WaterDemand;
import yardloom.water.roof.RoofShares;
import yardloom.water.roof.WaterSupply;
import yardloom.water.roof.formula.RainYield;

/**
 * What flows into a tank and out of it, step by step: day by day where the plan gives a series of
 * daily rain, else in a few equal storms a month.
 *
 * @param years how many years the steps span
 * @param how for the formula of each figure
 */
record TankSteps(
    List<Volume> inflows, List<Volume> demands, double years, String how, String note) {
  /** Storms that a month's rain is taken to come in. */
  private static final int STORMS = 6;

  static TankSteps of(Plan plan, Facts facts) {
    Optional<DailyRain> daily = facts.find(YardFacts.DAILY_RAIN);
    return daily.map(d -> byDay(plan, facts, d)).orElseGet(() -> byStorm(facts));
  }

  private static TankSteps byDay(Plan plan, Facts facts, DailyRain rain) {
    List<Volume> inflows = new ArrayList<>();
    List<Volume> demands = new ArrayList<>();
    List<Volume> months = demands(facts);
    for (DailyRain.Day day : rain.days()) {
      Volume inflow = Volume.ZERO;
      for (Element.Roof roof : plan.all(Element.Roof.class)) {
        inflow =
            inflow.plus(
                RainYield.of(
                    roof.shape().area(), day.rain(), RoofShares.of(roof.surface()).value()));
      }
      inflows.add(inflow);
      demands.add(months.get(day.date().getMonthValue() - 1).div(day.date().lengthOfMonth()));
    }
    boolean us = plan.info().units() == UnitSystem.US;
    String note =
        String.format(
            Locale.ROOT,
            "Day by day through %s, %s to %s: %s of rain, %d days in a row without any; each month's"
                + " need spread evenly over its days. At least: use before rain in each day (yield"
                + " after spillage); at most: rain before use (yield before spillage). Measured"
                + " years differ; first flush not taken off. Source: %s.",
            rain.station(),
            TableFormat.date(rain.days().get(0).date()),
            TableFormat.date(rain.days().get(rain.days().size() - 1).date()),
            us
                ? String.format(Locale.ROOT, "%.2f in", rain.total().inches())
                : String.format(Locale.ROOT, "%.0f mm", rain.total().millimetres()),
            rain.longestDrySpell(),
            rain.source().cite());
    String how = "steps of the tank, day by day through " + rain.station() + ", run twice, ";
    return new TankSteps(inflows, demands, rain.years(), how, note);
  }

  private static TankSteps byStorm(Facts facts) {
    List<Volume> inflows = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      int month = m;
      inflows.add(
          sum(facts.all(WaterSupply.KEY).stream().map(s -> s.monthly().get(month)).toList()));
    }
    return new TankSteps(
        cut(inflows),
        cut(demands(facts)),
        1,
        "steps of the tank, " + STORMS + " a month, over a second like year, ",
        "Each month's rain is taken to come in "
            + STORMS
            + " equal storms (an assumption). At least: use before rain in each step (yield after"
            + " spillage); at most: rain before use (yield before spillage). Longer dry spells make"
            + " it less. An average year after another; first flush not taken off.");
  }

  private static List<Volume> demands(Facts facts) {
    return GrossNeed.monthly(facts.all(WaterDemand.KEY)).stream().map(Derived::value).toList();
  }

  private static List<Volume> cut(List<Volume> months) {
    List<Volume> steps = new ArrayList<>();
    for (Volume month : months) {
      steps.addAll(Collections.nCopies(STORMS, month.div(STORMS)));
    }
    return steps;
  }

  private static Volume sum(List<Derived<Volume>> parts) {
    return parts.stream().map(Derived::value).reduce(Volume.ZERO, Volume::plus);
  }

  /** All that flows in, in an average one of the years. */
  Volume yearlyYield() {
    return inflows.stream().reduce(Volume.ZERO, Volume::plus).div(years);
  }

  /** All that is needed, gross, in an average one of the years. */
  Volume yearlyNeed() {
    return demands.stream().reduce(Volume.ZERO, Volume::plus).div(years);
  }
}
