package yardloom.water.need;

import java.util.Optional;
import yardloom.facts.Stand;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.formula.Taper;
import yardloom.water.need.formula.TreeEstablishment;
import yardloom.water.need.formula.WaterBudget;

/** What one watering of new plants brings, from tap or tank. */
public final class TaperNeed {
  /** Usual of young fruit trees in nurseries. */
  private static final Length NURSERY_TRUNK = Length.inches(1);

  private TaperNeed() {}

  /** The month, 0 (January) to 11, in whose weather most of a step lies. */
  public static int month(NewPlants plants, Taper.Step step) {
    return plants.grows().plusDays(step.from() - 1L + step.days() / 2).getMonthValue() - 1;
  }

  /** Whether all of them rest in that step, so that none draws water. */
  public static boolean rests(NewPlants plants, Taper.Step step) {
    int month = month(plants, step);
    return plants.stands().stream().allMatch(s -> s.thirst().kc().get(month) <= 0);
  }

  /** Whether a usual month, 0 to 11, rains as much as the thirstiest of them takes. */
  public static boolean isRainedOn(NewPlants plants, int month, MonthlyWeather weather) {
    double kc =
        plants.stands().stream().mapToDouble(s -> s.thirst().kc().get(month)).max().orElse(0);
    Length use = weather.referenceEt().get(month).value().times(Math.max(Taper.LEAST_KC, kc));
    return weather.effectiveRain().get(month).value().compareTo(use) >= 0;
  }

  /** Gross; of a tree that stands alone what its root ball takes. */
  public static Derived<Volume> each(
      Plan plan, NewPlants plants, Taper.Step step, MonthlyWeather weather) {
    Optional<Element.Tree> tree =
        plan.all(Element.Tree.class).stream().filter(t -> t.id().equals(plants.in())).findFirst();
    return tree.map(TaperNeed::rootBall)
        .orElseGet(() -> ofPlants(plants, step, weather, month(plants, step)));
  }

  /** A new tree drinks from its root ball, whatever its crown will be. */
  private static Derived<Volume> rootBall(Element.Tree tree) {
    boolean isSaid = tree.trunk().metres() > 0;
    Length trunk = isSaid ? tree.trunk() : NURSERY_TRUNK;
    return Derived.by("1.5 gal × trunk / 1 in", EstablishmentTable.MINNESOTA)
        .from("trunk", trunk, tree.place())
        .from("trunk by", isSaid ? "the plan" : "the usual size in nurseries")
        .gives(TreeEstablishment.most(trunk));
  }

  /** Gross, for the days until the next one. */
  private static Derived<Volume> ofPlants(
      NewPlants plants, Taper.Step step, MonthlyWeather weather, int month) {
    Derived<Length> monthly = weather.referenceEt().get(month);
    Length day = monthly.value().times(1.0 / Months.days(month));
    Derived.Builder why =
        Derived.by(
                "sum over plants of area × max(Kc, least Kc) × reference ET / days of the month ×"
                    + " days between / efficiency",
                EstablishmentTable.MINNESOTA)
            .from("reference ET", monthly)
            .from("days of the month", Months.days(month))
            .from("days between", step.everyDays())
            .from("least Kc", Taper.LEAST_KC)
            .from("efficiency", WaterBudget.DRIP_EFFICIENCY);
    Volume sum = Volume.ZERO;
    for (Stand stand : plants.stands()) {
      double kc = stand.thirst().kc().get(month);
      if (kc > 0) {
        sum = sum.plus(stand.placed().area().deep(Taper.depth(kc, day, step.everyDays())));
        why.from("Kc " + stand.plant(), kc, stand.place())
            .from("area " + stand.plant(), stand.placed().area(), stand.place());
      }
    }
    return why.gives(sum.times(1 / WaterBudget.DRIP_EFFICIENCY));
  }
}
