package yardloom.soil.lead;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.soil.lab.SoilTest;

/** Lead against the screening levels. */
public final class LeadCheck implements Check {
  @Override
  public String id() {
    return "soil.lead";
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<SoilTest> test = plan.attributes().get(SoilTest.KEY);
    if (test.isEmpty() || test.get().lead().ppm().isEmpty()) {
      return List.of();
    }
    double ppm = test.get().lead().ppm().getAsDouble();
    LeadScreening.Outcome outcome = LeadScreening.of(ppm, test.get().lead().otherSources());
    String found = "The soil holds " + Say.number(ppm) + " ppm of lead: ";
    return switch (outcome) {
      case BELOW -> List.of();
      case BELOW_UNLESS_OTHER_SOURCES ->
          List.of(
              finding(
                  test.get(),
                  Severity.NOTE,
                  found
                      + "below 200 ppm, but above 100 ppm, which holds where there are other"
                      + " sources of lead."));
      case ABOVE ->
          List.of(
              finding(test.get(), Severity.WARNING, found + "above the screening level of 2024."));
      case ABOVE_FORMER_LEVEL ->
          List.of(
              finding(
                  test.get(),
                  Severity.ERROR,
                  found + "above even the level before 2024 (400 ppm)."));
    };
  }

  private static Finding finding(SoilTest test, Severity severity, String text) {
    return Finding.of(
            "soil.lead",
            severity,
            text,
            "Ask the local health department. Grow food in raised beds of clean soil, keep bare"
                + " soil covered, wash hands and harvest; screening levels are not clean-up"
                + " standards.",
            LeadScreening.SOURCE)
        .at(test.place());
  }
}
