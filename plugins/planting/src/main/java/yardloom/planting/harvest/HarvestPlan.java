package yardloom.planting.harvest;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.traits.Growth;
import yardloom.planting.turn.Turn;

/**
 * What each planting and tree may bring in a year at full bearing.
 *
 * @param tooLate kinds that follow another and do not ripen in time, with their beds: not in lines
 * @param bedArea the ground of all beds' plantings whose yield is known
 * @param ofBeds what that ground bears, trees not counted; empty if there is none
 */
public record HarvestPlan(
    List<Line> lines, List<String> tooLate, Area bedArea, Optional<Range<Mass>> ofBeds) {
  /** The plugin's own fact. */
  public static final FactKey<HarvestPlan> KEY =
      FactKey.one("planting.harvest-lines", HarvestPlan.class).called("harvest by planting");

  public HarvestPlan {
    lines = List.copyOf(lines);
    tooLate = List.copyOf(tooLate);
  }

  /** Lowest and highest. */
  public record Range<T>(Derived<T> low, Derived<T> high) {}

  /**
   * One planting or tree.
   *
   * @param title its kind, and how it is trained
   * @param ground the part of a bed it has; empty for a tree
   * @param mass empty where no yield is known
   * @param stands whether it stands already and is in bearing
   * @param turn its days among the crops that follow each other on its ground, if any do
   */
  public record Line(
      ElementId in,
      Plant plant,
      String title,
      Optional<Area> ground,
      Optional<Range<Mass>> mass,
      boolean stands,
      Optional<Turn> turn) {
    /** Whether its ground has been counted with the crop that stands there before it. */
    boolean follows() {
      return turn.filter(t -> !t.isFirst()).isPresent();
    }
  }

  /** Names of plants without a known yield, each once, by name. */
  public List<String> leftOut() {
    return names(l -> l.mass().isEmpty());
  }

  /** Those of them that season food, of which nobody weighs what is picked. */
  public List<String> bySprig() {
    return names(l -> l.mass().isEmpty() && Growth.roles(l.plant()).contains("seasoning"));
  }

  private List<String> names(Predicate<Line> which) {
    return lines.stream().filter(which).map(l -> l.plant().name()).distinct().sorted().toList();
  }
}
