package yardloom.program.output;

import java.util.List;
import java.util.Optional;
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
    if (!asked.isEmpty()) {
      return named(asked, SourceRef.NONE, outcome);
    }
    Optional<Attributes.Entry<SheetChoice>> said = outcome.plan().said(SheetChoice.KEY);
    if (said.isPresent() && !said.get().value().ids().isEmpty()) {
      return named(said.get().value().ids(), said.get().place(), outcome);
    }
    return outcome.sheets().stream().filter(SheetPlan::usual).toList();
  }

  private static List<SheetPlan> named(List<String> wanted, SourceRef place, Outcome outcome) {
    List<String> offered = outcome.sheets().stream().map(SheetPlan::id).distinct().toList();
    for (String id : wanted) {
      if (!offered.contains(id)) {
        throw unknown(id, offered, place);
      }
    }
    return outcome.sheets().stream().filter(s -> wanted.contains(s.id())).toList();
  }

  private static PlanException unknown(String id, List<String> names, SourceRef place) {
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
