package yardloom.materials.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.materials.model.Surface;
import yardloom.materials.work.MaterialFacts;

/** The sheets for client, driver and crew. */
public final class MaterialSheets {
  private static final int MATERIALS = 40;
  private static final int WORK = 42;

  /** The layers that drivers need to find their way. */
  static final Set<String> WAYS = Set.of("kernel.utility", "materials.piles", "materials.trellis");

  /** The same with what is laid. */
  static final Set<String> GROUND =
      Stream.concat(WAYS.stream(), Stream.of("materials.depths", "materials.surfaces"))
          .collect(Collectors.toUnmodifiableSet());

  private MaterialSheets() {}

  /** All of them. */
  public static List<SheetMaker> all() {
    return List.of(
        new Materials(), new DeliverySheet(), new Work(), new ClientSheet(), new CrewSheets());
  }

  /** Surfaces, stacks, take-off and orders. */
  private static final class Materials implements SheetMaker {
    @Override
    public String id() {
      return "materials.materials";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.SURFACES, MaterialFacts.POCKETS, YardFacts.BILL);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      List<Surface> surfaces = facts.all(MaterialFacts.SURFACES);
      if (surfaces.isEmpty()) {
        return List.of();
      }
      List<Panel> panels = new ArrayList<>();
      panels.add(Panel.SitePlan.yardWith(GROUND));
      panels.add(SectionFigure.of(surfaces, plan.info().units()));
      for (TableMaker maker : List.of(new TakeOffTable(), new OrderTable(), WorkTables.sources())) {
        panels.add(new Panel.TableBlock(maker.make(plan, facts)));
      }
      panels.add(
          new Panel.Notes(
              "Laying the stack",
              List.of(
                  "Mow low, remove tough weeds, water. Do not till.",
                  "Cardboard without tape, staples or gloss, lapped, wetted, covered the same day.",
                  "Keep chips off trunks, stems and walls as drawn.",
                  "Plant perennials in pockets of compost through the cardboard.")));
      return List.of(new SheetPlan(MATERIALS, "materials", "Materials", panels));
    }
  }

  /** Phases, hours and cost, for client and builder. */
  private static final class Work implements SheetMaker {
    @Override
    public String id() {
      return "materials.work";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(
          MaterialFacts.TASKS,
          MaterialFacts.PHASES,
          MaterialFacts.COST,
          MaterialFacts.HAULS,
          YardFacts.BILL,
          YardFacts.FROST);
    }

    @Override
    public List<SheetPlan> make(Plan plan, Facts facts) {
      if (facts.all(MaterialFacts.PHASES).isEmpty()) {
        return List.of();
      }
      List<Panel> panels = new ArrayList<>();
      List<TableMaker> makers = new ArrayList<>(WorkTables.all());
      makers.addAll(CostTables.all());
      makers.add(new HaulTable());
      makers.add(new RegionTable());
      for (TableMaker maker : makers) {
        Table table = maker.make(plan, facts);
        if (!table.isEmpty()) {
          panels.add(new Panel.TableBlock(table));
        }
      }
      return List.of(new SheetPlan(WORK, "work", "Work, orders and cost", panels));
    }
  }
}
