package yardloom.materials.mulch;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.TopUp;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.formula.Settling;

/** Gives the chips to add in the years after laying. */
public final class TopUpCalculator implements Calculator {
  private static final int YEARS = 3;

  @Override
  public String id() {
    return "materials.top-ups";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.MULCH_TOTALS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.TOP_UPS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Derived<Volume> laid = in.get(YardFacts.MULCH_TOTALS).chips();
    if (laid.value().si() == 0) {
      return;
    }
    Derived<Double> settling = MulchSettings.of(plan).settling();
    for (int year = 1; year <= YEARS; year++) {
      out.give(
          YardFacts.TOP_UPS,
          new TopUp(
              year,
              Derived.by("laid × first-year loss / 2^(year − 1)", Settling.SOURCE)
                  .from("laid", laid)
                  .from("first-year loss", settling)
                  .from("year", year)
                  .gives(Settling.addedInYear(year, laid.value(), settling.value()))));
    }
  }
}
