package yardloom.program.output;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.draw.SheetChoice;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;

/** Which of the sheets on offer are drawn. */
final class WantedSheets {
  private WantedSheets() {}

  /**
   * What the command asks for, else what the plan does, else the usual set; in the set's order.
   *
   * @throws PlanException (UNKNOWN_WORD) if one is not on offer
   */
  static List<SheetPlan> of(Outcome outcome, List<String> asked) {
    Optional<Attributes.Entry<SheetChoice>> said = outcome.plan().said(SheetChoice.KEY);
    List<String> wanted =
        asked.isEmpty() ? said.map(s -> s.value().ids()).orElse(List.of()) : asked;
    if (wanted.isEmpty()) {
      return outcome.sheets().stream().filter(SheetPlan::usual).toList();
    }
    SourceRef place =
        asked.isEmpty() ? said.map(Attributes.Entry::place).orElse(SourceRef.NONE) : SourceRef.NONE;
    Set<String> offered = new LinkedHashSet<>();
    outcome.sheets().forEach(s -> offered.add(s.id()));
    for (String id : wanted) {
      if (!offered.contains(id)) {
        throw unknown(id, List.copyOf(offered), place);
      }
    }
    return outcome.sheets().stream().filter(s -> wanted.contains(s.id())).toList();
  }

  private static PlanException unknown(String id, List<String> offered, SourceRef place) {
    List<String> names = new ArrayList<>(offered);
    return new PlanException(
        ProblemCode.UNKNOWN_WORD,
        place,
        "this plan has no sheet \""
            + id
            + "\"; its sheets are "
            + String.join(", ", names)
            + Nearest.to(id, names).map(n -> ". Did you mean " + n + "?").orElse(""));
  }
}
