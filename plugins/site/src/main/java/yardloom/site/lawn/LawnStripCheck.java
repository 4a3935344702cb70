package yardloom.site.lawn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
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

  /** One for all strips of which the same is made. */
  static List<Finding> findings(Plan plan, List<LawnStrip> strips) {
    Map<String, List<LawnStrip>> byAdvice = new LinkedHashMap<>();
    for (LawnStrip strip : strips) {
      byAdvice.computeIfAbsent(strip.advice(), a -> new ArrayList<>()).add(strip);
    }
    List<Finding> findings = new ArrayList<>();
    byAdvice.forEach((advice, alike) -> findings.add(finding(plan, advice, alike)));
    return findings;
  }

  private static Finding finding(Plan plan, String advice, List<LawnStrip> found) {
    // By name: where on the plan a strip lies says nothing of its rank.
    List<LawnStrip> strips = found.stream().sorted(Comparator.comparing(LawnStrip::names)).toList();
    LawnStrip first = strips.get(0);
    Shape ground = Shape.union(strips.stream().map(LawnStrip::ground).toList());
    boolean one = strips.size() == 1;
    Length widest =
        strips.stream().map(LawnStrip::width).max(Comparator.naturalOrder()).orElseThrow();
    return Finding.of(
            "site.lawn-strip",
            Severity.WARNING,
            (one ? "a strip of " : strips.size() + " strips of ")
                + OpenGround.of(plan).noun()
                + " up to "
                + Show.small(plan, widest)
                + " wide, "
                + Show.area(plan, ground.area())
                + (one ? ", is left beside " : " in all, are left: beside ")
                + strips.stream()
                    .map(LawnStrip::names)
                    .distinct()
                    .collect(Collectors.joining("; beside ")),
            one ? advice : advice.replaceFirst("\\bit\\b", "each"),
            practice(plan))
        .about(first.beside().get(0).id(), first.beside().get(0).place())
        .marking(ground);
  }
}
