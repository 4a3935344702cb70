package yardloom.materials.work;

import yardloom.kernel.fact.FactKey;
import yardloom.materials.model.AmendmentDose;
import yardloom.materials.model.CostEstimate;
import yardloom.materials.model.HeapPlan;
import yardloom.materials.model.PhaseTime;
import yardloom.materials.model.Pockets;
import yardloom.materials.model.SawList;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.model.TaskLoad;

/** Facts between this plugin's own calculators and tables. */
public final class MaterialFacts {
  /** Compost in planting pockets, if the plan asks for it. */
  public static final FactKey<Pockets> POCKETS =
      FactKey.one("materials.pockets", Pockets.class).called("planting pockets");

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

  /** The soil as tested or named. */
  public static final FactKey<SoilGiven> GIVEN_SOIL =
      FactKey.one("soil.given", SoilGiven.class).called("soil as tested or named");

  private MaterialFacts() {}
}
