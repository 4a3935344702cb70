package yardloom.water.tank;

import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Pressure;
import yardloom.water.pipe.formula.Water;

/** What the tanks of the plan hold, weigh and press on the ground. */
public final class StandingTable implements TableMaker {
  private static final String ID = "tanks";
  static final Source ARITHMETIC = Source.commonPractice("a litre of water weighs a kilogram");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Tanks of the plan")
            .column(Column.text("tank", "Tank"))
            .column(Column.text("roof", "Filled by"))
            .column(Column.of("count", "Linked", Measure.COUNT))
            .column(Column.of("each", "Each holds", Measure.WATER))
            .column(Column.of("holds", "All hold", Measure.WATER))
            .column(Column.of("weight", "Water of one weighs", Measure.MASS))
            .column(Column.of("foot", "Foot of one", Measure.AREA))
            .column(Column.of("pressure", "It presses on its foot", Measure.PRESSURE))
            .column(Column.of("stand", "Stands above ground", Measure.DEPTH));
    boolean any = false;
    for (Entry<TankPlan> entry : plan.attributes().all(TankPlan.KEY)) {
      any = true;
      TankPlan tank = entry.value();
      Mass weight = Mass.kilograms(tank.body().each().litres());
      Area foot = tank.feet().get(0).area();
      Pressure pressure = Water.pressure(tank.body().height());
      table.row(
          Cell.text(tank.name()),
          Cell.text(tank.filling().roof()),
          Cell.number(tank.body().count()),
          Cell.of(tank.body().each()),
          Cell.of(
              Derived.by("each × linked", ARITHMETIC)
                  .from("each", tank.body().each(), entry.place())
                  .from("linked", tank.body().count(), entry.place())
                  .gives(tank.size())),
          Cell.of(
              Derived.by("each × 8.3454 lb / 1 gal", ARITHMETIC)
                  .from("each", tank.body().each(), entry.place())
                  .gives(weight)),
          Cell.of(foot),
          Cell.of(
              Derived.by("height of its water × 0.43314 psi / 1 ft", ARITHMETIC)
                  .from("height of its water", tank.body().height(), entry.place())
                  .gives(pressure)),
          Cell.of(tank.body().stand()));
    }
    if (any) {
      table.note(
          "Water alone; add the tank and its stand. A level bed of compacted gravel or a slab,"
              + " wider than the foot on all sides, off the fill along foundations; strap tall"
              + " tanks to a wall or frame.");
      table.note(
          "Linked tanks stand on one level and share one line at the foot with a valve each, so"
              + " that one can be cleaned. Inlet through a screen of 1/16 in (1.5 mm) mesh on every"
              + " opening against mosquitoes; overflow as wide as the inlet; a locked lid against"
              + " children.");
      table.note(
          "Never joined to the drinking-water pipes: where the tap tops it up, an air gap above the"
              + " rim or the backflow preventer that the local code names. Drain it, its valve and"
              + " its lines before hard frost where winters freeze. Ask whether the place wants a"
              + " permit, and whether it limits collecting rain.");
    }
    return table.build();
  }
}
