package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Each sleeve under paving: where, how long, and which pipes pass through it. */
public final class SleeveTable implements TableMaker {
  @Override
  public String id() {
    return "sleeves";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Trenches.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Sleeves under paving")
            .column(Column.of("sleeve", "Sleeve", Measure.COUNT))
            .column(Column.text("under", "Under"))
            .column(Column.of("length", "Length", Measure.LENGTH))
            .column(Column.text("pipes", "Pipes in it"));
    int number = 0;
    List<Trenches.Trench> trenches = new ArrayList<>();
    facts.find(Trenches.KEY).ifPresent(t -> trenches.addAll(t.trenches()));
    for (Trenches.Trench trench : trenches) {
      for (Line sleeve : trench.paved()) {
        number++;
        table.row(
            Cell.number(number),
            Cell.text(under(sleeve, plan)),
            Cell.of(sleeve.length()),
            Cell.text(trench.text()));
      }
    }
    if (number > 0) {
      table.note(
          "One sleeve for all pipes of its trench, inside at least twice as wide as they are"
              + " together (common practice), dashed on the plan; set it before the paving where"
              + " that is new. Lengths are those under the paving.");
    }
    return table.build();
  }

  private static String under(Line sleeve, Plan plan) {
    for (Element e : plan.elements()) {
      boolean isPaved = e instanceof Element.Paving || e instanceof Element.Path;
      if (isPaved && e.shape().contains(sleeve.middle())) {
        return e.id().name();
      }
    }
    return "paving";
  }
}
