package yardloom.planting.suit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.source.Source.Standing;
import yardloom.kernel.table.NameRuns;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.Suits;

/**
 * The reasons of one rule as findings, each kind once: where it fails, a warning; where it depends,
 * or where the figure is recalled only, a note. Cold, heat, chill, light and juglone have checks of
 * their own.
 *
 * @param rule the question
 */
public record SuitCheck(String id, String rule) implements Check {
  private static final String HOUSEHOLD = "household";

  /** The rules without a check of their own. */
  public static List<Check> all() {
    List<Check> checks = new ArrayList<>();
    for (String rule :
        List.of("acidity", "drainage", "water", "pollination", "room", "list", HOUSEHOLD)) {
      checks.add(new SuitCheck("planting.fit-" + rule, rule));
    }
    return checks;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SuitPlan.KEY);
  }

  private record Said(SuitPlan.Line line, Reason reason) {}

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Map<String, List<Said>> kinds = new TreeMap<>();
    for (SuitPlan.Line line : facts.get(SuitPlan.KEY).lines()) {
      for (Reason reason : line.reasons()) {
        if (reason.rule().equals(rule)) {
          // Who is at risk reads one finding, not one for each plant.
          String key = rule.equals(HOUSEHOLD) ? rule : line.plant().plant().name() + reason.suits();
          kinds.computeIfAbsent(key, k -> new ArrayList<>()).add(new Said(line, reason));
        }
      }
    }
    return kinds.values().stream()
        .map(said -> rule.equals(HOUSEHOLD) ? household(said) : finding(said))
        .toList();
  }

  private Finding household(List<Said> all) {
    String text =
        all.stream()
            .map(
                s ->
                    s.line().plant().plant().name()
                        + ": "
                        + s.reason().text()
                        + " ["
                        + s.reason().source().cite()
                        + "]")
            .distinct()
            .sorted()
            .collect(Collectors.joining("; "));
    return Finding.of(
        id(),
        Severity.NOTE,
        text,
        all.get(0).reason().todo(),
        Source.commonPractice("each plant that may harm is named with its own source"));
  }

  private Finding finding(List<Said> kind) {
    Said first = kind.get(0);
    List<String> places = kind.stream().map(s -> s.line().plant().in().name()).distinct().toList();
    String others = places.size() == 1 ? "" : " (so at " + NameRuns.text(places) + ")";
    boolean sure = first.reason().source().standing() != Standing.MEMORY;
    boolean fails = first.reason().suits() == Suits.DOES_NOT_FIT;
    return Finding.of(
            id(),
            fails && sure ? Severity.WARNING : Severity.NOTE,
            first.line().plant().plant().name() + ": " + first.reason().text() + others,
            first.reason().todo(),
            first.reason().source())
        .about(first.line().plant().in(), first.line().plant().place());
  }
}
