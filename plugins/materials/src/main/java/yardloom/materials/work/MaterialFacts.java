package yardloom.materials.work;

import yardloom.kernel.fact.FactKey;
import yardloom.materials.model.AmendmentDose;
import yardloom.materials.model.CostEstimate;
import yardloom.materials.model.Haul;
import yardloom.materials.model.HeapPlan;
import yardloom.materials.model.PhaseTime;
import yardloom.materials.model.Pockets;
import yardloom.materials.model.SawList;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TaskLoad;
import yardloom.materials.model.TipPile;

/** Facts between this plugin's own calculators and tables. */
public final class MaterialFacts {
  /** The ground that receives layers, without overlaps. */
  public static final FactKey<Surface> SURFACES =
      FactKey.many("materials.surfaces", Surface.class).called("surfaces to cover");

  /** Compost in planting pockets, if the plan asks for it. */
  public static final FactKey<Pockets> POCKETS =
      FactKey.one("materials.pockets", Pockets.class).called("planting pockets");

  /** Heaps on the tip spots of the plan. */
  public static final FactKey<TipPile> PILES =
      FactKey.many("materials.piles", TipPile.class).called("tip piles");

  /** Barrow trips from the heaps. */
  public static final FactKey<Haul> HAULS =
      FactKey.many("materials.hauls", Haul.class).called("barrow ways");

  /** Hours by task. */
  public static final FactKey<TaskLoad> TASKS =
      FactKey.many("materials.tasks", TaskLoad.class).called("tasks");

  /** Phases with their days, in working order. */
  public static final FactKey<PhaseTime> PHASES =
      FactKey.many("materials.phases", PhaseTime.class).called("phases");

  /** What it may cost. */
  public static final FactKey<CostEstimate> COST =
      FactKey.one("materials.cost", CostEstimate.class).called("cost");

  /** What to spread on the soil. */
  public static final FactKey<AmendmentDose> AMENDMENTS =
      FactKey.many("materials.amendments", AmendmentDose.class).called("amendments");

  /** Cut lists, one for each lumber size and stock length. */
  public static final FactKey<SawList> SAW_LISTS =
      FactKey.many("materials.saw-lists", SawList.class).called("saw lists");

  /** What becomes of prunings and weeds. */
  public static final FactKey<HeapPlan> HEAP =
      FactKey.one("materials.heap", HeapPlan.class).called("compost heap");

  private MaterialFacts() {}
}
