package yardloom.planting.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.work.SheetPage;
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

/** The key of each kind with its count, on the planting sheet; the schedule beside it explains. */
public final class PlantKeyPainter implements Painter {
  /** Keys are what this sheet is for: none is dropped. */
  private static final int RANK = 3;

  private static final double LETTERS_MM = 2.5;

  @Override
  public Layer layer() {
    return new Layer("planting.keys", "Keys of plants", Layer.Band.PLANTS);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY, TurnPlan.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.PLANTING);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    PlantPlaces places = facts.get(PlantPlaces.KEY);
    Map<String, String> keys = PlantKeys.of(places);
    TurnPlan turns = facts.get(TurnPlan.KEY);
    List<Mark> marks = new ArrayList<>();
    for (List<Planting> bed : places.byBed().values()) {
      String text =
          bed.stream()
              .map(
                  p ->
                      (p.follows().isPresent() ? "then " : "")
                          + p.at().size()
                          + " "
                          + keys.get(p.plant().name())
                          + turns.of(p).map(t -> " " + t.months()).orElse(""))
              .collect(Collectors.joining(", "));
      Shape shape = bed.get(0).bed().shape();
      marks.add(
          new Mark.Label(shape.heart(), text, LETTERS_MM, true, RANK, Mark.Anchor.NEAR).on(shape));
    }
    for (Planting.Specimen s : places.specimens()) {
      String text = "1 " + keys.get(s.plant().name());
      marks.add(new Mark.Label(s.tree().at(), text, LETTERS_MM, true, RANK, Mark.Anchor.NEAR));
    }
    return marks;
  }
}
