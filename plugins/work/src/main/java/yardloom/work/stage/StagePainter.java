package yardloom.work.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** What is made in which stage: a hatch and a number for each, so that a copy in black says it. */
public final class StagePainter implements Painter {
  static final String LAYER = "work.stages";

  private static final String INK = "#1c2b2d";
  private static final double NUMBER_MM = 3;
  private static final int NEVER_DROPPED = 2;

  /** A tree's crown would hide the beds below it, so trees have a ring of this radius. */
  private static final Length TREE = Length.metres(0.5);

  private static final List<Style.Hatch> HATCHES =
      List.of(
          Style.Hatch.DIAGONAL,
          Style.Hatch.DOTS,
          Style.Hatch.CROSS,
          Style.Hatch.VERTICAL,
          Style.Hatch.DIAGONAL_BACK,
          Style.Hatch.HORIZONTAL,
          Style.Hatch.SPARSE_DOTS,
          Style.Hatch.BRICK);

  private static final Style BUILT = Style.filled("stage-built", "#d9d9d4").outlined(INK, 0.18);

  @Override
  public Layer layer() {
    return new Layer(LAYER, "Stages", Layer.Band.NOTES);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  /** One stage as it is drawn. */
  private record Drawn(String sign, Style style, String text) {}

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    Map<String, Drawn> stages = stages(plan);
    List<Mark> regions = new ArrayList<>();
    List<Mark> signs = new ArrayList<>();
    for (Element element : plan.elements()) {
      drawn(element, stages)
          .ifPresent(
              stage -> {
                Shape ground = ground(element);
                regions.add(new Mark.Region(ground, stage.style(), stage.text()));
                signs.add(
                    new Mark.Label(
                            ground.centroid(),
                            stage.sign(),
                            NUMBER_MM,
                            true,
                            NEVER_DROPPED,
                            Mark.Anchor.NEAR)
                        .on(ground));
              });
    }
    regions.addAll(signs);
    return regions;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return stages(plan).entrySet().stream()
        .filter(stage -> !stage.getKey().isEmpty())
        .map(stage -> LegendEntry.area(stage.getValue().text(), stage.getValue().style()))
        .toList();
  }

  /** By part; what is said outside of all stages is of the first that is made. */
  private static Map<String, Drawn> stages(Plan plan) {
    Map<String, Drawn> stages = new LinkedHashMap<>();
    int number = 0;
    for (Attributes.Entry<Stage> entry : plan.attributes().all(Stage.KEY)) {
      Stage stage = entry.value();
      if (stage.built()) {
        stages.put(stage.name(), new Drawn("built", BUILT, "Built: " + stage.name()));
        continue;
      }
      number++;
      Style style =
          Style.filled("stage-" + number, "#ffffff")
              .hatched(HATCHES.get((number - 1) % HATCHES.size()))
              .outlined(INK, 0.25);
      Drawn drawn = new Drawn("stage " + number, style, "Stage " + number + ": " + stage.name());
      stages.put(stage.name(), drawn);
      stages.putIfAbsent("", drawn);
    }
    return stages;
  }

  /** Empty for what no stage makes, such as the house. */
  private static Optional<Drawn> drawn(Element element, Map<String, Drawn> stages) {
    return ground(element).isEmpty() || element.part().isEmpty() && element.stands()
        ? Optional.empty()
        : Optional.ofNullable(stages.get(element.part()));
  }

  private static Shape ground(Element element) {
    return element instanceof Element.Tree tree ? Shape.circle(tree.at(), TREE) : element.shape();
  }
}
