package yardloom.planting.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.FlatCrown;
import yardloom.facts.Obstacle.Stage;
import yardloom.facts.built.Barrier;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.planting.canopy.GrownShare;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;

/**
 * The beds in the first year, when new plants leave most of the ground to the mulch, and behind
 * that in the fifth, when what is to be thinned is gone; the plan itself shows them grown. What is
 * kept flat stays flat.
 */
public final class YoungView {
  private static final double WIDTH_MM = 120;
  private static final int FIFTH = 5;
  private static final Style BED =
      Style.filled("young-bed", Palette.SHADE).outlined(Palette.INK, 0.25);
  private static final Style FIRST =
      Style.filled("year-1-plant", Palette.PAPER).outlined(Palette.INK, 0.25);
  private static final Style LATER =
      Style.line("year-5-plant", Palette.MUTED, 0.18).dashed("1 0.6");

  private static final Style SOWN = Style.line("sown-row", Palette.INK, 0.13);

  private final List<Mark> marks = new ArrayList<>();
  private boolean isSown;

  private YoungView() {}

  /** The view; beds without plants are left out. */
  public static Panel.Figure of(Plan plan, PlantPlaces places) {
    YoungView view = new YoungView();
    Map<ElementId, Element.Bed> beds = new LinkedHashMap<>();
    places.drawn().forEach(p -> beds.put(p.bed().id(), p.bed()));
    beds.values().forEach(b -> view.marks.add(new Mark.Region(b.shape(), BED, b.id().name())));
    for (Stage stage : List.of(Stage.YEAR_5, Stage.YEAR_1)) {
      places.drawn().forEach(p -> view.planting(p, stage));
      places.specimens().forEach(s -> view.specimen(s, stage));
      plan.all(Element.Fence.class).forEach(f -> view.hedge(f, stage));
    }
    List<LegendEntry> legend = new ArrayList<>();
    legend.add(LegendEntry.symbol("plant in its first year", SymbolForm.DISC, FIRST));
    legend.add(LegendEntry.line("in its fifth year", LATER));
    if (view.isSown) {
      legend.add(LegendEntry.line("row to sow", SOWN));
    }
    return new Panel.Figure("In the first and the fifth year", view.marks, legend, WIDTH_MM, 0);
  }

  private void planting(Planting p, Stage stage) {
    if (p.plant().growth().start().isInDrills()) {
      if (stage == Stage.YEAR_1) {
        p.drills().stream().filter(d -> d.size() > 1).forEach(d -> sown(d, p.plant()));
      }
      return;
    }
    Optional<Double> share = share(p.plant(), p.choice().stands(), stage);
    Optional<Thinned> thinned = Thinning.of(p).filter(t -> t.season() <= FIFTH);
    List<Point> at =
        stage == Stage.YEAR_5 ? thinned.map(t -> Thinning.kept(p, t)).orElse(p.at()) : p.at();
    Length grown = p.plant().size().spread().middle();
    share.ifPresent(s -> at.forEach(a -> disc(a, grown.times(s), stage, p.plant())));
  }

  /** Discs of what is sown would be one black field. */
  private void sown(List<Point> drill, Plant plant) {
    isSown = true;
    Line row = Line.between(drill.get(0), drill.get(drill.size() - 1));
    marks.add(new Mark.Stroke(row, SOWN, plant.name()));
  }

  private void specimen(Planting.Specimen s, Stage stage) {
    Optional<FlatCrown> flat = s.tree().attributes().get(FlatCrown.KEY);
    share(s.plant(), s.tree().stands(), stage)
        .ifPresent(
            share -> {
              if (flat.isPresent()) {
                FlatCrown grown = flat.get();
                FlatCrown now =
                    new FlatCrown(
                        grown.width().times(share), grown.depth().times(share), grown.bearing());
                marks.add(new Mark.Region(now.about(s.tree().at()), style(stage), s.title()));
              } else {
                disc(s.tree().at(), s.crown().times(share), stage, s.plant());
              }
            });
  }

  /** A new hedge is a strip along its line, as wide as woody plants are by then. */
  private void hedge(Element.Fence fence, Stage stage) {
    if (Barrier.isHedge(fence) && !fence.stands()) {
      double grownM = fence.shape().area().squareMetres() / fence.line().length().metres();
      Shape strip = fence.line().strip(Length.metres(grownM * GrownShare.woody(stage)));
      marks.add(new Mark.Region(strip, style(stage), fence.id().name()));
    }
  }

  /** Of its grown size; empty in the fifth year where the first has shown it already. */
  private static Optional<Double> share(Plant plant, boolean stands, Stage stage) {
    double first = GrownShare.share(plant, stands ? Stage.MATURE : Stage.YEAR_1);
    double fifth = GrownShare.share(plant, stands ? Stage.MATURE : Stage.YEAR_5);
    return stage == Stage.YEAR_1 ? Optional.of(first) : Optional.of(fifth).filter(f -> f > first);
  }

  private void disc(Point at, Length spread, Stage stage, Plant plant) {
    marks.add(new Mark.Symbol(at, SymbolForm.DISC, spread, Angle.ZERO, style(stage), plant.name()));
  }

  private static Style style(Stage stage) {
    return stage == Stage.YEAR_1 ? FIRST : LATER;
  }
}
