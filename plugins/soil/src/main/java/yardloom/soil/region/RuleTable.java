package yardloom.soil.region;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.LocalRule;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** What to check where the yard lies. */
public final class RuleTable implements TableMaker {
  @Override
  public String id() {
    return "materials-local-rules";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.LOCAL_RULES, YardFacts.REGION, YardFacts.SURFACES);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Local rules to check")
            .column(Column.text("topic", "Topic"))
            .column(Column.text("rule", "Rule"))
            .column(Column.text("where", "Holds in"))
            .column(Column.text("source", "Source"));
    if (facts.all(YardFacts.SURFACES).isEmpty()) {
      return table.build();
    }
    for (LocalRule rule : facts.all(YardFacts.LOCAL_RULES)) {
      table.row(
          Cell.text(rule.topic()),
          Cell.text(rule.text()),
          Cell.text(rule.region()),
          Cell.text(rule.source().cite()));
    }
    facts
        .find(YardFacts.REGION)
        .ifPresent(r -> table.note("Region: " + r.name() + ". " + r.about()));
    return table.note("Codes differ by town; ask before you build.").build();
  }
}
