package yardloom.site.ground;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;
import yardloom.site.ground.EarthWords.Earth;

/**
 * Gives the earth to dig and to fill: swales, banks and pads. Beds are not levelled, since nothing
 * is tilled; the table of level beds is for those who want to.
 */
public final class EarthCalculator implements Calculator {
  @Override
  public String id() {
    return "site.earth";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of();
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.JOBS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      if (structure.turn() != PartTurn.NOW) {
        continue;
      }
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(
              s ->
                  give(
                      out,
                      WorkTask.DIG_EARTH,
                      Optional.of(structure.id()),
                      GroundTables.earthOf(structure, s)));
    }
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      if (structure.turn() == PartTurn.NOW) {
        structure
            .attributes()
            .get(Berm.KEY)
            .ifPresent(
                berm ->
                    give(
                        out,
                        WorkTask.FILL_EARTH,
                        Optional.of(structure.id()),
                        GroundTables.earthOf(structure, berm)));
      }
    }
    for (Attributes.Entry<Earth> earth : plan.attributes().all(Earth.KEY)) {
      if (!plan.isNow(earth)) {
        continue;
      }
      give(out, WorkTask.DIG_EARTH, Optional.empty(), earth.value().cut());
      give(out, WorkTask.FILL_EARTH, Optional.empty(), earth.value().fill());
    }
  }

  private static void give(
      Sink out, WorkTask task, Optional<ElementId> of, Derived<Volume> volume) {
    if (volume.value().si() > 0) {
      out.give(YardFacts.JOBS, new Job(task, WorkPhase.EARTH, volume, of, Optional.empty()));
    }
  }
}
