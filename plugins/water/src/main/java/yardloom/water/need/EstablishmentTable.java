package yardloom.water.need;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.need.formula.TreeEstablishment;

/** How newly planted trees are watered until they look after themselves. */
public final class EstablishmentTable implements TableMaker {
  private static final String ID = "establishment";

  public static final Source MINNESOTA =
      Source.read(
          "Watering newly planted trees and shrubs", "University of Minnesota Extension", 0, "");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.STANDS);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = columns();
    Map<ElementId, String> species = new TreeMap<>();
    facts.all(YardFacts.STANDS).forEach((Stand s) -> species.put(s.in(), s.plant()));
    boolean any = false;
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      if (tree.trunk().metres() <= 0 || tree.stands()) {
        continue;
      }
      any = true;
      table.row(
          Cell.text(tree.id().name()),
          Cell.text(species.getOrDefault(tree.id(), "")),
          Cell.of(tree.trunk()),
          Cell.of(
              why("1 gal for each inch of trunk", tree)
                  .gives(TreeEstablishment.least(tree.trunk()))),
          Cell.of(
              why("1.5 gal for each inch of trunk", tree)
                  .gives(TreeEstablishment.most(tree.trunk()))),
          Cell.text(every(1)),
          Cell.text(every(3)),
          Cell.text(every(13)),
          Cell.of(
              why("1.5 years for each inch of trunk", tree)
                  .gives(TreeEstablishment.years(tree.trunk()))));
    }
    if (any) {
      table.note(
          "For trees that are to be planted; "
              + MINNESOTA.cite()
              + ". Feel the soil first: it should be moist, not wet. Shrubs take a quarter to a"
              + " third of their container's volume each time, and are established in 1 to 2"
              + " years.");
    }
    return table.build();
  }

  private static Table.Builder columns() {
    return Table.titled(ID, "Watering new trees")
        .column(Column.text("tree", "Tree"))
        .column(Column.text("plant", "Plant"))
        .column(Column.of("trunk", "Trunk", Measure.DEPTH))
        .column(Column.of("least", "Each watering, from", Measure.WATER))
        .column(Column.of("most", "to", Measure.WATER))
        .column(Column.text("weeks-1-2", "Weeks 1 to 2"))
        .column(Column.text("weeks-3-12", "Weeks 3 to 12"))
        .column(Column.text("later", "Later"))
        .column(Column.of("years", "Years until established", Measure.RATIO));
  }

  private static Derived.Builder why(String formula, Element.Tree tree) {
    return Derived.by(formula, MINNESOTA).from("trunk", tree.trunk(), tree.place());
  }

  private static String every(int week) {
    long days = Math.round(TreeEstablishment.interval(week).days());
    return days == 1 ? "daily" : days == 7 ? "weekly" : "every 2 to " + days + " days";
  }
}
