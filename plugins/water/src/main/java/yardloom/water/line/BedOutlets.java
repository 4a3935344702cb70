package yardloom.water.line;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/**
 * What presses at each outlet of a bed, and what it gives, while its zone runs: row by row from the
 * header on, outlets in a row that hardly differ told together.
 *
 * @param zone the number of its zone
 */
public record BedOutlets(ElementId bed, int zone, List<Group> groups) {
  /** The outlets of every bed. */
  public static final FactKey<BedOutlets> KEY =
      FactKey.many("water.outlets", BedOutlets.class).called("pressure and flow of outlets");

  /**
   * Outlets of one row that follow each other.
   *
   * @param row its number in the bed, from 1
   * @param first outlet from the row's start, from 1
   * @param last one like it
   * @param at how far along the row the first stands
   * @param pressure at the first
   * @param flow of the first
   */
  public record Group(
      int row, int first, int last, Length at, Derived<Pressure> pressure, Derived<Flow> flow) {}

  public BedOutlets {
    groups = List.copyOf(groups);
  }
}
