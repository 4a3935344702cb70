package yardloom.work.stage;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.AddingUp;
import yardloom.kernel.table.Cell;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Quantity;
import yardloom.work.cost.CostEstimate;

/** What the stages of a plan come to together. */
final class StageSums {
  static final Source SOURCE = Source.plan("stages of the plan");

  private StageSums() {}

  /**
   * The sum.
   *
   * @param of what each stage has, in their order; empty where it has none
   */
  static <Q extends Quantity<Q>> Derived<Q> sum(
      List<PartOfPlan> stages, List<Optional<Derived<Q>>> of, Q zero) {
    Derived.Builder why = Derived.by("sum over stages", SOURCE);
    Q sum = zero;
    for (int i = 0; i < stages.size(); i++) {
      Optional<Derived<Q>> its = of.get(i);
      if (its.isPresent()) {
        why.from(stages.get(i).name(), its.get());
        sum = sum.plus(its.get().value());
      }
    }
    return why.gives(sum);
  }

  /** The likely cost of each stage as printed, so that they add up; blank where none is known. */
  static List<Cell> costs(List<PartOfPlan> stages) {
    return added(likely(stages), Optional.empty());
  }

  /** The likely cost of each stage with all digits. */
  static List<Optional<Derived<Money>>> likely(List<PartOfPlan> stages) {
    return stages.stream()
        .map(s -> s.facts().find(CostEstimate.FACT).map(c -> c.total().likely()))
        .toList();
  }

  /**
   * Amounts as printed, so that they add up.
   *
   * @param printed the sum as it is printed elsewhere; without it their own
   */
  static List<Cell> added(List<Optional<Derived<Money>>> amounts, Optional<Money> printed) {
    List<Derived<Money>> known = amounts.stream().flatMap(Optional::stream).toList();
    Money sum = known.stream().map(Derived::value).reduce(Money.ZERO, Money::plus);
    Iterator<Cell> cells = AddingUp.money(known, printed.orElse(sum)).iterator();
    return amounts.stream().map(a -> a.isPresent() ? cells.next() : Cell.BLANK).toList();
  }
}
