package yardloom.planting.harvest;

import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;
import yardloom.planting.harvest.HarvestPlan.Line;
import yardloom.planting.harvest.HarvestPlan.Range;
import yardloom.planting.turn.Turn;
import yardloom.planting.year.GrowingYear;

/** Spreads the harvest of a year over the months of each kind's season; nothing without frost. */
public final class HarvestYearCalculator implements Calculator {
  private static final Source SPREAD =
      Source.commonPractice("a harvest is spread evenly over the days of its season");
  private static final Source MIDDLE =
      Source.commonPractice("the likely harvest is the middle of lowest and highest");
  private static final Source SUM = Source.commonPractice("sum over beds and trees");

  /**
   * A line of known season.
   *
   * @param shares of its harvest in each month, January to December
   */
  private record Picked(Line line, List<Double> shares) {
    Derived<Mass> part(Derived<Mass> year, int month, double grown) {
      return Derived.by("harvest of a year × share of the month × share of full bearing", SPREAD)
          .from("harvest of a year", year)
          .from("share of the month", shares.get(month))
          .from("share of full bearing", grown)
          .gives(year.value().times(shares.get(month) * grown));
    }
  }

  @Override
  public String id() {
    return "planting.harvest-year";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(HarvestPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(HarvestYear.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<GrowingYear> year = GrowingYear.of(in);
    if (year.isEmpty()) {
      return;
    }
    MonthDay lastFrost = year.get().begins().value();
    List<Picked> lines = new ArrayList<>();
    Set<String> leftOut = new TreeSet<>();
    for (Line line : in.get(HarvestPlan.KEY).lines()) {
      if (line.mass().isPresent()) {
        Set<Month> rests = HarvestSeason.rests(line.plant(), in.find(YardFacts.CLIMATE));
        HarvestSeason.of(line.plant(), year.get(), in.find(YardFacts.CLIMATE), line.turn())
            .ifPresentOrElse(
                season -> lines.add(new Picked(line, season.shares(lastFrost, rests))),
                () -> leftOut.add(line.plant().name()));
      }
    }
    List<HarvestYear.Month> months = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      months.add(month(lines, month));
    }
    out.give(HarvestYear.KEY, new HarvestYear(months, List.copyOf(leftOut)));
  }

  private static HarvestYear.Month month(List<Picked> lines, int month) {
    List<Picked> picked = lines.stream().filter(p -> p.shares().get(month) > 0).toList();
    Set<String> plants = new TreeSet<>();
    picked.forEach(p -> plants.add(p.line().plant().name()));
    List<Derived<Mass>> young = new ArrayList<>();
    for (int year : HarvestYear.YEARS) {
      young.add(sum(picked, p -> p.part(likely(p.line()), month, grown(p.line(), year))));
    }
    return new HarvestYear.Month(
        List.copyOf(plants),
        sum(picked, p -> p.part(p.line().mass().get().low(), month, 1)),
        sum(picked, p -> p.part(likely(p.line()), month, 1)),
        sum(picked, p -> p.part(p.line().mass().get().high(), month, 1)),
        young);
  }

  private static double grown(Line line, int year) {
    Optional<Bearing> bearing = Bearing.of(line.plant());
    if (line.turn().filter(Turn::isPickedNextYear).isPresent() && year == 1) {
      return 0;
    }
    return line.stands() ? 1 : bearing.map(b -> b.share(year)).orElse(1.0);
  }

  private static Derived<Mass> likely(Line line) {
    Range<Mass> mass = line.mass().get();
    return Derived.by("(lowest + highest) / 2", MIDDLE)
        .from("lowest", mass.low())
        .from("highest", mass.high())
        .gives(mass.low().value().plus(mass.high().value()).div(2));
  }

  private static Derived<Mass> sum(List<Picked> lines, Function<Picked, Derived<Mass>> part) {
    Derived.Builder why = Derived.by("sum over beds and trees", SUM);
    Mass sum = Mass.ZERO;
    for (Picked picked : lines) {
      Derived<Mass> one = part.apply(picked);
      why.from(picked.line().plant().name() + " in " + picked.line().in().name(), one);
      sum = sum.plus(one.value());
    }
    return why.gives(sum);
  }
}
