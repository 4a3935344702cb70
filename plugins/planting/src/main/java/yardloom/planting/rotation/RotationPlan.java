package yardloom.planting.rotation;

import java.util.List;
import yardloom.kernel.fact.FactKey;

/**
 * What annuals stand on which plot in which year.
 *
 * @param years how many, from the first
 */
public record RotationPlan(int years, List<Plot> plots) {
  /** The plugin's own fact. */
  public static final FactKey<RotationPlan> KEY =
      FactKey.one("planting.rotation-plan", RotationPlan.class).called("rotation of annuals");

  public RotationPlan {
    plots = List.copyOf(plots);
  }

  /**
   * A part of a bed.
   *
   * @param kinds by year, each with its family
   * @param early years, counted from 1, in which a family is back before its time
   */
  public record Plot(String name, List<String> kinds, List<Integer> early) {
    public Plot {
      kinds = List.copyOf(kinds);
      early = List.copyOf(early);
    }
  }
}
