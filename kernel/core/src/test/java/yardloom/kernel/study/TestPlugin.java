package yardloom.kernel.study;

import java.util.List;
import java.util.function.Function;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;

/** A plugin of given parts. */
record TestPlugin(
    String id,
    List<Calculator> calculators,
    List<Check> checks,
    List<Painter> painters,
    List<TableMaker> tables,
    List<SheetMaker> sheets,
    List<Caution> said)
    implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo(id, id, "1");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return said;
  }

  /** One that only checks. */
  static TestPlugin checking(Check... checks) {
    return new TestPlugin(
        "test", List.of(), List.of(checks), List.of(), List.of(), List.of(), List.of());
  }

  /** A check that reads no facts. */
  static Check check(String id, Function<Plan, List<Finding>> finds) {
    return new Check() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public List<Finding> run(Plan plan, Facts facts) {
        return finds.apply(plan);
      }
    };
  }

  /** A painter that reads no facts and says nothing of itself. */
  static Painter painter(Layer layer, List<Mark> marks, List<LegendEntry> legend) {
    return new Painter() {
      @Override
      public Layer layer() {
        return layer;
      }

      @Override
      public List<Mark> paint(Plan plan, Facts facts) {
        return marks;
      }

      @Override
      public List<LegendEntry> legend(Plan plan, Facts facts) {
        return legend;
      }
    };
  }
}
