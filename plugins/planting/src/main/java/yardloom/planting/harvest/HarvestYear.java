package yardloom.planting.harvest;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Mass;

/**
 * The harvest of each month, January to December.
 *
 * @param leftOut plants with a yield and no known season, by name
 */
public record HarvestYear(List<Month> months, List<String> leftOut) {
  /** The years after planting that the table shows beside full bearing. */
  public static final List<Integer> YEARS = List.of(1, 2, 3);

  /** The plugin's own fact. */
  public static final FactKey<HarvestYear> KEY =
      FactKey.one("planting.harvest-year", HarvestYear.class).called("harvest by month");

  public HarvestYear {
    months = List.copyOf(months);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * One month.
   *
   * @param plants what is picked, by name
   * @param low at full bearing, the sum of the lowest yields
   * @param likely the middle of lowest and highest
   * @param high the sum of the highest
   * @param young the likely harvest of each of {@link #YEARS}
   */
  public record Month(
      List<String> plants,
      Derived<Mass> low,
      Derived<Mass> likely,
      Derived<Mass> high,
      List<Derived<Mass>> young) {
    public Month {
      plants = List.copyOf(plants);
      young = List.copyOf(young);
    }
  }
}
