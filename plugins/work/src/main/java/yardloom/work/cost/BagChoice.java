package yardloom.work.cost;

import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;

/**
 * Bags against bulk for one order.
 *
 * @param phase when it is needed
 * @param cost what both cost; empty where a price is missing
 * @param missing what has no price
 */
public record BagChoice(
    String item,
    WorkPhase phase,
    Derived<Volume> order,
    Derived<Integer> bags,
    Optional<Cost> cost,
    List<String> missing) {
  /** Bags or bulk of every bulk order. */
  public static final FactKey<BagChoice> FACT =
      FactKey.many("work.bags", BagChoice.class).called("bags or bulk");

  public BagChoice {
    missing = List.copyOf(missing);
  }

  /**
   * What it costs either way.
   *
   * @param breakEven from which volume on bulk is cheaper; empty if it never is
   */
  public record Cost(
      Derived<Money> inBags, Derived<Money> inBulk, Optional<Derived<Volume>> breakEven) {}
}
