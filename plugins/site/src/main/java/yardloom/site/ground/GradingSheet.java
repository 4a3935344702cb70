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
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Contours, swales and earth to move, with a section down the slope; none on level ground. */
public final class GradingSheet implements SheetMaker {
  private static final int NUMBER = 15;

  @Override
  public String id() {
    return "site.grading";
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    Optional<SlopeSection> section = SlopeSection.worthDrawing(plan);
    if (section.isEmpty()) {
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
    panels.addAll(SwaleSection.figures(plan));
    panels.add(new Panel.Notes("Earth and levels", GradingNotes.of(plan)));
    offers.tables(SheetPage.GRADING).forEach(t -> panels.add(new Panel.TableBlock(t)));
    return List.of(new SheetPlan(NUMBER, "grading", "Grading", panels));
  }

  /** Whether the ground falls so much that the plan has such a sheet. */
  public static boolean isWorthDrawing(Plan plan) {
    return SlopeSection.worthDrawing(plan).isPresent();
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
