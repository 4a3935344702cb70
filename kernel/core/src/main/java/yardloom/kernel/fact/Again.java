package yardloom.kernel.fact;

import java.util.function.Function;
import java.util.function.Supplier;
import yardloom.kernel.plan.Plan;

/** Decides for each reader of a run whether it works or what it gave before still holds. */
public interface Again {
  /** Everybody works. */
  Again AFRESH =
      new Again() {
        @Override
        public void over(Plan plan, Results facts) {}

        @Override
        public void offers(Function<Object, ?> tables) {}

        @Override
        public <T> T of(String reader, Supplier<T> work) {
          return work.get();
        }
      };

  /** Who decides in the run over a part of the plan, which is told of that part by itself. */
  default Again part(String name) {
    return AFRESH;
  }

  /** A run over {@code plan} begins; {@code facts} fills while calculators give. */
  void over(Plan plan, Results facts);

  /** The tables of the run are made: {@code tables} tells those that are offered for a use. */
  void offers(Function<Object, ?> tables);

  /**
   * What {@code work} gives, now or before.
   *
   * @param reader kind and name; a name that comes again in one run means the next of that name
   */
  <T> T of(String reader, Supplier<T> work);
}
