package yardloom.planting.harvest;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
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

/** Spreads the harvest of a year over the months of each kind's season; nothing without frost. */
public final class HarvestYearCalculator implements Calculator {
  private static final Source SPREAD =
      Source.commonPractice("a harvest is spread evenly over the days of its season");
  private static final Source MIDDLE =
      Source.commonPractice("the likely harvest is the middle of lowest and highest");
  private static final Source SUM = Source.commonPractice("sum over beds and trees");

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
    return Set.of(YardFacts.FROST, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(HarvestYear.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<FrostDates> frost = in.find(YardFacts.FROST);
    if (frost.isEmpty()) {
      return;
    }
    MonthDay lastFrost = frost.get().lastOfSpring().value();
    List<Line> lines = new ArrayList<>();
    Set<String> leftOut = new TreeSet<>();
    for (Line line : in.get(HarvestPlan.KEY).lines()) {
      if (line.mass().isPresent()) {
        boolean known = HarvestSeason.of(line.plant().name()).isPresent();
        if (known) {
          lines.add(line);
        } else {
          leftOut.add(line.plant().name());
        }
      }
    }
    List<HarvestYear.Month> months = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      months.add(month(lines, month, lastFrost, in.find(YardFacts.CLIMATE)));
    }
    out.give(HarvestYear.KEY, new HarvestYear(months, List.copyOf(leftOut)));
  }

  private static HarvestYear.Month month(
      List<Line> lines, int month, MonthDay lastFrost, Optional<ClimateNormals> climate) {
    Map<Line, Double> shares = new HashMap<>();
    Set<String> plants = new TreeSet<>();
    List<Line> picked = new ArrayList<>();
    for (Line line : lines) {
      double share =
          HarvestSeason.of(line.plant().name())
              .orElseThrow()
              .shares(lastFrost, HarvestSeason.rests(line.plant(), climate))
              .get(month);
      if (share > 0) {
        shares.put(line, share);
        picked.add(line);
        plants.add(line.plant().name());
      }
    }
    List<Derived<Mass>> young = new ArrayList<>();
    for (int year : HarvestYear.YEARS) {
      young.add(sum(picked, line -> part(line, likely(line), shares.get(line), grown(line, year))));
    }
    return new HarvestYear.Month(
        List.copyOf(plants),
        sum(picked, line -> part(line, line.mass().get().low(), shares.get(line), 1)),
        sum(picked, line -> part(line, likely(line), shares.get(line), 1)),
        sum(picked, line -> part(line, line.mass().get().high(), shares.get(line), 1)),
        young);
  }

  private static double grown(Line line, int year) {
    Optional<Bearing> bearing = Bearing.of(line.plant().name());
    return line.stands() ? 1 : bearing.map(b -> b.share(year)).orElse(1.0);
  }

  private static Derived<Mass> likely(Line line) {
    Range<Mass> mass = line.mass().get();
    return Derived.by("(lowest + highest) / 2", MIDDLE)
        .from("lowest", mass.low())
        .from("highest", mass.high())
        .gives(mass.low().value().plus(mass.high().value()).div(2));
  }

  private static Derived<Mass> part(Line line, Derived<Mass> year, double share, double grown) {
    return Derived.by("harvest of a year × share of the month × share of full bearing", SPREAD)
        .from("harvest of a year", year)
        .from("share of the month", share)
        .from("share of full bearing", grown)
        .gives(year.value().times(share * grown));
  }

  private static Derived<Mass> sum(List<Line> lines, Function<Line, Derived<Mass>> part) {
    Derived.Builder why = Derived.by("sum over beds and trees", SUM);
    Mass sum = Mass.ZERO;
    for (Line line : lines) {
      Derived<Mass> one = part.apply(line);
      why.from(line.plant().name() + " in " + line.in().name(), one);
      sum = sum.plus(one.value());
    }
    return why.gives(sum);
  }
}
