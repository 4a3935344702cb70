package yardloom.facts.work;

import java.util.Locale;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/**
 * The phases of the work in the trade's order. What is bought or done belongs to one of them; a
 * layer or table that offers itself for a phase stands on the crew's page of it.
 *
 * <p>Trees and shrubs go in before the cardboard, since their holes would go through it; all else
 * is set through it into the compost. What covers the cardboard is laid with it, the dripline on
 * that, and the chips of beds last; those of beds that are planted in another season, then.
 */
public enum WorkPhase implements SheetUse {
  MARK("Mark utilities"),
  /** Before staking: a mower needs free ground, and paint on long grass goes with the clippings. */
  MOW("Mow low"),
  STAKE("Stake out"),
  EARTH("Earthwork"),
  /** Walls, steps, paving, fences and sheds, before beds are edged along them. */
  BUILD("Build"),
  EDGE("Edges and trench"),
  TREES("Plant trees and shrubs"),
  HEAD("Head assembly"),
  SOAK("Soak the ground"),
  SHEET("Ground cover"),
  PLANT("Plant"),
  DRIP("Drip"),
  FINISH("Finish mulch"),
  /** What lies over plants of another season, of annuals planted in spring for one. */
  LATER("Mulch what is planted later"),
  ESTABLISH("Establish");

  private final String title;

  WorkPhase(String title) {
    this.title = title;
  }

  /** What it is called in calculations of any plan. */
  public String title() {
    return title;
  }

  /** How tables of a plan call it: cardboard is named where there is some. */
  public String title(Plan plan) {
    return this == SHEET && OpenGround.hasCardboard(plan) ? "Cardboard and its cover" : title;
  }

  /** The name that tables and files have, such as {@code stake}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
