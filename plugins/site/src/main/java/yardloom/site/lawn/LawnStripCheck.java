package yardloom.site.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.site.element.Show;

/** Says where strips of lawn are left that nobody can mow, and what to make of them. */
public final class LawnStripCheck implements Check {
  static final Source PRACTICE =
      Source.commonPractice("lawn narrower than 30 in (76 cm) is not mown but trimmed by hand");

  private static final Source SLIVERS =
      Source.commonPractice("ground narrower than 30 in (76 cm) beside beds is weeded by hand");

  private static Source practice(Plan plan) {
    return OpenGround.of(plan) == OpenGround.LAWN ? PRACTICE : SLIVERS;
  }

  @Override
  public String id() {
    return "site.lawn-strip";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(LawnStrip.FACT);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return findings(plan, facts.all(LawnStrip.FACT));
  }

  static List<Finding> findings(Plan plan, List<LawnStrip> strips) {
    List<Finding> findings = new ArrayList<>();
    for (LawnStrip strip : strips) {
      findings.add(
          Finding.of(
                  "site.lawn-strip",
                  Severity.WARNING,
                  "a strip of "
                      + OpenGround.of(plan).noun()
                      + " up to "
                      + Show.small(plan, strip.width())
                      + " wide, "
                      + Show.area(plan, strip.ground().area())
                      + ", is left beside "
                      + strip.names(),
                  strip.advice(),
                  practice(plan))
              .about(strip.beside().get(0).id(), strip.beside().get(0).place())
              .marking(strip.ground()));
    }
    return findings;
  }
}
