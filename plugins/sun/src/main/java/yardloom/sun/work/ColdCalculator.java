package yardloom.sun.work;

import java.time.MonthDay;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.sun.model.SunKeys;

/** Gives frost dates and the hardiness zone, as the plan states them. */
public final class ColdCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.cold";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.FROST, YardFacts.HARDINESS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    first(plan, SunKeys.FROST).ifPresent(f -> out.give(YardFacts.FROST, given(f)));
    first(plan, SunKeys.ZONE)
        .map(Entry::value)
        .map(
            z ->
                new Hardiness(
                    z.number(), z.warmerHalf(), Optional.empty(), Source.plan(z.source())))
        .ifPresent(h -> out.give(YardFacts.HARDINESS, h));
  }

  private static FrostDates given(Entry<SunKeys.FrostGiven> entry) {
    SunKeys.FrostGiven frost = entry.value();
    return new FrostDates(
        stated(frost.last(), "last frost of spring", entry),
        stated(frost.first(), "first frost of autumn", entry),
        frost.limit());
  }

  private static Derived<MonthDay> stated(
      MonthDay day, String what, Entry<SunKeys.FrostGiven> entry) {
    return Derived.by(what, Source.plan(entry.value().source()))
        .from("day", day, entry.place())
        .gives(day);
  }

  private static <T> Optional<Entry<T>> first(Plan plan, AttributeKey<T> key) {
    return plan.attributes().all(key).stream().findFirst();
  }
}
