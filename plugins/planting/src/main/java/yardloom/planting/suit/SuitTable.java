package yardloom.planting.suit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Acceptance;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.suit.rule.LocalList;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.Suits;

/** How each new plant suits its place: a row for each reason, one for what fits. */
public final class SuitTable implements TableMaker {
  /** Questions whose findings come from checks of their own. */
  private static final Map<String, String> CHECKS =
      Map.of(
          "cold", "planting.hardiness",
          "heat", "planting.heat",
          "chill", "planting.chill",
          "light", "planting.light",
          "neighbours", "planting.juglone");

  @Override
  public String id() {
    return "plant-fit";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SuitPlan.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    SuitPlan suits = facts.get(SuitPlan.KEY);
    Table.Builder table =
        Table.titled(id(), "How the plants fit their places")
            .column(Column.text("where", "Where"))
            .column(Column.text("plant", "Plant"))
            .column(Column.text("fit", "Fit"))
            .column(Column.text("question", "Question"))
            .column(Column.text("why", "Why"))
            .column(Column.text("do", "What to do"))
            .column(Column.text("instead", "Instead"))
            .column(Column.text("source", "Source"));
    for (SuitPlan.Line line : suits.lines()) {
      if (line.reasons().isEmpty()) {
        table.row(row(line, "fits", "", "", "", "", ""));
      }
      for (Reason reason : line.reasons()) {
        Optional<String> why = overruled(plan, line, reason);
        table.row(
            row(
                line,
                said(reason.suits()) + (why.isPresent() ? ", overruled" : ""),
                reason.rule(),
                reason.text(),
                why.map(w -> "overruled: " + w).orElse(reason.todo()),
                instead(line, reason, suits),
                reason.source().cite()));
      }
    }
    if (!suits.lines().isEmpty()) {
      table.note("Asked were " + asked(suits) + "; of the others the plan says too little.");
    }
    return table.build();
  }

  /** Why the plan's author lets it stand all the same, if {@code accept} says so. */
  private static Optional<String> overruled(Plan plan, SuitPlan.Line line, Reason reason) {
    String rule = CHECKS.getOrDefault(reason.rule(), "planting.fit-" + reason.rule());
    return plan.attributes().all(Acceptance.KEY).stream()
        .map(e -> e.value())
        .filter(a -> a.rule().equals(rule))
        .filter(a -> a.element().map(line.plant().in()::isCalled).orElse(true))
        .map(Acceptance::why)
        .findFirst();
  }

  /** In the words of the table. */
  private static String said(Suits suits) {
    return switch (suits) {
      case FITS -> "fits";
      case FITS_IF -> "fits if";
      case DOES_NOT_FIT -> "does not fit";
    };
  }

  private static String instead(SuitPlan.Line line, Reason reason, SuitPlan suits) {
    boolean asked = reason.suits() == Suits.DOES_NOT_FIT && reason == line.reasons().get(0);
    if (!asked) {
      return "";
    }
    List<String> better = Substitutes.of(line.plant(), suits.yard());
    return better.isEmpty() ? "nothing like it does better here" : String.join(", ", better);
  }

  private static Cell[] row(SuitPlan.Line line, String... rest) {
    Cell[] cells = new Cell[rest.length + 2];
    cells[0] = Cell.text(line.plant().in().name());
    cells[1] = Cell.text(line.plant().plant().name());
    for (int i = 0; i < rest.length; i++) {
      cells[i + 2] = rest[i].isEmpty() ? Cell.BLANK : Cell.text(rest[i]);
    }
    return cells;
  }

  /** What was known of the yard, in the order of the rules. */
  private static String asked(SuitPlan suits) {
    List<String> known = new java.util.ArrayList<>();
    suits.yard().weather().hardiness().ifPresent(h -> known.add("cold"));
    suits.yard().weather().normals().ifPresent(c -> known.add("heat"));
    suits.yard().weather().chill().ifPresent(c -> known.add("chill"));
    suits.yard().sun().ifPresent(s -> known.add("light"));
    suits.yard().ground().acidity().ifPresent(a -> known.add("acidity"));
    suits.yard().ground().profile().ifPresent(s -> known.add("drainage"));
    if (!suits.yard().valves().isEmpty()) {
      known.add("water by valve");
    }
    known.add("pollination");
    known.add("neighbours");
    known.add("room to walls and lot line");
    if (!suits.yard().plan().attributes().all(LocalList.KEY).isEmpty()) {
      known.add("lists of the place");
    }
    suits.yard().household().ifPresent(h -> known.add("the household"));
    return String.join(", ", known);
  }
}
