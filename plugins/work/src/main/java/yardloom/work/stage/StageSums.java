package yardloom.work.stage;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Quantity;

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
}
