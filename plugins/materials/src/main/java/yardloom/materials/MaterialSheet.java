package yardloom.materials;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.ground.OpenGround;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.PartTables;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.materials.load.LoadTable;
import yardloom.materials.pile.DriverNotes;
import yardloom.materials.sourcing.SourcesTable;
import yardloom.materials.surface.DepthPainter;
import yardloom.materials.surface.LayingNotes;
import yardloom.materials.surface.SectionFigure;
import yardloom.materials.surface.StackTable;
import yardloom.materials.surface.SurfacePainter;
import yardloom.materials.takeoff.OrderTable;
import yardloom.materials.takeoff.Pockets;
import yardloom.materials.takeoff.TakeOffTable;

/** Surfaces, build-up, take-off, orders and what the driver needs. */
public final class MaterialSheet implements SheetMaker {
  private static final int MATERIALS = 20;

  @Override
  public String id() {
    return "materials.materials";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.SURFACES,
        YardFacts.MULCH_TOTALS,
        YardFacts.SUPPLIES,
        Pockets.FACT,
        YardFacts.PILES,
        YardFacts.LOADS,
        YardFacts.BILL,
        YardFacts.SITE_CONTACTS);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    if (surfaces.isEmpty()) {
      return List.of();
    }
    List<Panel> panels = new ArrayList<>();
    panels.add(Panel.SitePlan.yardWith(ground(offers)));
    panels.add(SectionFigure.of(surfaces, plan.info().units()));
    for (TableMaker maker :
        List.of(new StackTable(), new TakeOffTable(), new OrderTable(), new LoadTable())) {
      panels.add(new Panel.TableBlock(PartTables.of(maker, plan, facts)));
    }
    for (Table table : offers.tables(SheetPage.MATERIALS)) {
      panels.add(new Panel.TableBlock(table));
    }
    panels.add(new Panel.TableBlock(PartTables.of(new SourcesTable(), plan, facts)));
    List<String> driver = DriverNotes.of(plan, facts);
    if (!driver.isEmpty()) {
      panels.add(new Panel.Notes("For the driver", driver));
    }
    panels.add(
        new Panel.Notes(
            "Laying the mulch",
            LayingNotes.steps(OpenGround.hasCardboard(plan), LayingNotes.hasDrip(surfaces))));
    return List.of(new SheetPlan(MATERIALS, "materials", "Materials and delivery", panels));
  }

  private static Set<String> ground(Offers offers) {
    Set<String> layers = new HashSet<>(offers.layers(SheetPage.WAYS));
    layers.add(SurfacePainter.LAYER);
    layers.add(DepthPainter.LAYER);
    return Set.copyOf(layers);
  }
}
