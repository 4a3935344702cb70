package yardloom.planting.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.planting.canopy.GrownShare;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** The beds as they look in the first year: new plants leave most of the ground to the mulch. */
public final class FirstYearView {
  private static final double WIDTH_MM = 120;
  private static final Style BED =
      Style.filled("year-1-bed", Palette.SHADE).outlined(Palette.INK, 0.25);
  private static final Style PLANT =
      Style.filled("year-1-plant", Palette.PAPER).outlined(Palette.INK, 0.18);

  private FirstYearView() {}

  /** The view; beds without plants are left out. */
  public static Panel.Figure of(PlantPlaces places) {
    List<Mark> marks = new ArrayList<>();
    Map<ElementId, Element.Bed> beds = new LinkedHashMap<>();
    places.plantings().forEach(p -> beds.put(p.bed().id(), p.bed()));
    beds.values().forEach(b -> marks.add(new Mark.Region(b.shape(), BED, b.id().name())));
    for (Planting p : places.plantings()) {
      Stage stage = p.choice().stands() ? Stage.MATURE : Stage.YEAR_1;
      Length spread = p.plant().spread().middle().times(GrownShare.share(p.plant(), stage));
      for (Point at : p.at()) {
        marks.add(
            new Mark.Symbol(at, SymbolForm.DISC, spread, Angle.ZERO, PLANT, p.plant().name()));
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      Stage stage = s.tree().stands() ? Stage.MATURE : Stage.YEAR_1;
      Length crown = s.crown().times(GrownShare.share(s.plant(), stage));
      marks.add(
          new Mark.Symbol(
              s.tree().at(), SymbolForm.DISC, crown, Angle.ZERO, PLANT, s.plant().name()));
    }
    return new Panel.Figure(
        "In the first year",
        marks,
        List.of(LegendEntry.symbol("plant at its first year's spread", SymbolForm.DISC, PLANT)),
        WIDTH_MM,
        0);
  }
}
