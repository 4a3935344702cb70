package yardloom.work.labour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.work.Job;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Quantity;

/** Jobs of the same task in the same phase, added up. */
final class JobSums {
  private static final Source SUM = Source.plan("sum over the things of the plan");

  private JobSums() {}

  /**
   * One job for each task of a phase, and each part with a rate of its own, in the order of phases
   * and tasks; nothing stays nothing.
   */
  static List<Job> of(List<Job> jobs) {
    Map<String, List<Job>> same = new TreeMap<>();
    for (Job job : jobs) {
      String key =
          String.format("%02d %02d %s", job.phase().ordinal(), job.task().ordinal(), job.title());
      same.computeIfAbsent(key, k -> new ArrayList<>()).add(job);
    }
    return same.values().stream().map(JobSums::sum).toList();
  }

  private static Job sum(List<Job> jobs) {
    Job first = jobs.get(0);
    if (jobs.size() == 1) {
      return first;
    }
    Derived.Builder why = Derived.by("sum over the yard", SUM);
    for (int i = 0; i < jobs.size(); i++) {
      why.from("part " + (i + 1), jobs.get(i).amount());
    }
    List<?> amounts = jobs.stream().map(j -> j.amount().value()).toList();
    Derived<?> sum =
        amounts.get(0) instanceof Quantity<?> quantity
            ? why.gives(sum(quantity, amounts))
            : why.gives(amounts.stream().mapToInt(a -> (Integer) a).sum());
    return new Job(first.task(), first.phase(), sum, Optional.empty(), first.pace());
  }

  /** One task is measured in one kind of amount. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Q sum(Quantity<Q> first, List<?> amounts) {
    return amounts.stream().map(a -> (Q) a).reduce(Quantity::plus).orElseThrow();
  }
}
