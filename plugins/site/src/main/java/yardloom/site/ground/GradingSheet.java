package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Contours, swales and earth to move, with a section down the slope; none on level ground. */
public final class GradingSheet implements SheetMaker {
  private static final int NUMBER = 15;

  /** Ground that falls less over the whole lot is called level. */
  private static final double LEVEL_M = 0.3;

  @Override
  public String id() {
    return "site.grading";
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    Optional<SlopeSection> section = surface.flatMap(s -> SlopeSection.of(plan, s));
    if (section.isEmpty() || section.get().fallM() < LEVEL_M) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(offers.layers(SheetPage.GRADING)));
    Shape moved = moved(plan);
    if (!moved.isEmpty()) {
      panels.add(
          new Panel.Enlarged(
              "Swales and beds", offers.layers(SheetPage.GRADING), Optional.of(moved)));
    }
    panels.add(section.get().figure(plan.info().units()));
    offers.tables(SheetPage.GRADING).forEach(t -> panels.add(new Panel.TableBlock(t)));
    return List.of(new SheetPlan(NUMBER, "grading", "Grading", panels));
  }

  /** Where earth is moved: beds and swales; the rest of a lot needs no larger drawing. */
  private static Shape moved(Plan plan) {
    return Shape.union(
        Stream.concat(
                plan.all(Element.Bed.class).stream().map(Element.Bed::shape),
                plan.all(Element.Structure.class).stream()
                    .filter(s -> s.attributes().get(LevelWords.SwaleLine.KEY).isPresent())
                    .map(Element.Structure::shape))
            .toList());
  }
}
