package yardloom.planting.list;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.turn.TurnPlan;

/**
 * Says beside each bed how many of which plants stand in it; the planting sheet has keys instead.
 */
public final class PlantNamePainter implements Painter {
  /** After the names of beds and paths, which matter more. */
  private static final int LABEL_RANK = 4;

  /** What another bed says too is in the table; no leader is worth it. */
  private static final int REPEATED_RANK = 5;

  @Override
  public Layer layer() {
    return new Layer("planting.names", "Names of plants", Layer.Band.PLANTS);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY, TurnPlan.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.PLANT);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (List<Planting> bed : facts.get(PlantPlaces.KEY).byBed().values()) {
      TurnPlan turns = facts.get(TurnPlan.KEY);
      String text = bed.stream().map(p -> label(p, turns)).collect(Collectors.joining(", "));
      int rank = said.add(text) ? LABEL_RANK : REPEATED_RANK;
      Shape shape = bed.get(0).bed().shape();
      marks.add(new Mark.Label(shape.heart(), text, 2, false, rank, Mark.Anchor.NEAR).on(shape));
    }
    return marks;
  }

  /** What shares its ground over the year says in which months it stands there. */
  private static String label(Planting p, TurnPlan turns) {
    String months = turns.of(p).map(t -> " (" + t.months() + ")").orElse("");
    return (p.follows().isPresent() ? "then " : "") + kind(p) + months;
  }

  private static String kind(Planting p) {
    int drills = p.drills().size();
    return p.plant().growth().start().isInDrills()
        ? drills + (drills == 1 ? " row of " : " rows of ") + p.plant().name()
        : p.at().size() + " " + p.plant().name() + (p.choice().stands() ? " (existing)" : "");
  }
}
