package yardloom.facts.work;

import java.util.List;

/**
 * Something on the plan that is no element of it, such as a tank or a trellis, and how it is
 * counted.
 *
 * @param name as tables call it
 * @param kind the word that draws it
 * @param bought the items of the bill for it, without sizes and places
 * @param done what is done for it
 * @param phase in which
 * @param why where nothing is bought or done; else empty
 */
public record DrawnThing(
    String name,
    String kind,
    List<String> bought,
    List<WorkTask> done,
    WorkPhase phase,
    String why) {
  public DrawnThing {
    bought = List.copyOf(bought);
    done = List.copyOf(done);
    if (bought.isEmpty() && done.isEmpty() == why.isEmpty()) {
      throw new IllegalArgumentException(name + " is counted, or there is a reason");
    }
  }

  /** What is bought and worked. */
  public DrawnThing(
      String name, String kind, List<String> bought, List<WorkTask> done, WorkPhase phase) {
    this(name, kind, bought, done, phase, "");
  }
}
