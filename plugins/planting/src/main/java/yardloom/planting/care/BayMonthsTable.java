package yardloom.planting.care;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Months;
import yardloom.planting.year.GrowingYear;

/** What the garden leaves over in each month once it is grown, and what to mix it with. */
public final class BayMonthsTable implements TableMaker {
  /** Leaves come down after the first frost, for so long: common practice. */
  private static final int FALL_DAYS = 35;

  private static final String LEAVES = "leaves of trees";

  @Override
  public String id() {
    return "compost-months";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY, YardFacts.FROST, YardFacts.WARM_SEASON);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "What goes into the bay, by month")
            .column(Column.text("month", "Month"))
            .column(Column.text("green", "Green"))
            .column(Column.text("brown", "Brown"))
            .column(Column.text("woody", "Too thick: cut short or chip"))
            .column(Column.text("mix", "Mix"));
    List<CareAct> grown =
        facts.all(CareAct.KEY).stream().filter(a -> a.when().season() == CareAct.GROWN).toList();
    if (grown.isEmpty()) {
      return table.build();
    }
    Set<Month> fall = fall(plan, facts);
    for (Month month : Month.values()) {
      Set<String> green = of(grown, month, CareRow.Remains.GREEN);
      Set<String> brown = of(grown, month, CareRow.Remains.BROWN);
      if (fall.contains(month)) {
        brown.add(LEAVES);
      }
      table.row(
          Cell.text(Months.fullName(month)),
          Cell.text(String.join(", ", green)),
          Cell.text(String.join(", ", brown)),
          Cell.text(String.join(", ", of(grown, month, CareRow.Remains.WOODY))),
          Cell.text(mix(!green.isEmpty(), !brown.isEmpty())));
    }
    return table
        .note(
            "Buckets, not weights. Acts are those of the grown garden in the table of care; sick"
                + " plants and seeding weeds never go in. By: "
                + CareRow.sources().source("UCR").cite()
                + ".")
        .build();
  }

  private static String mix(boolean green, boolean brown) {
    if (green && brown) {
      return "3 buckets of brown to 1 of green, in thin layers";
    } else if (green) {
      return "3 buckets of saved leaves, straw or torn cardboard to 1 of green";
    } else if (brown) {
      return "Keep it dry beside the bay for summer";
    }
    return "Nothing new; turn the heap, wet it if it is dry";
  }

  private static Set<String> of(List<CareAct> acts, Month month, CareRow.Remains remains) {
    Set<String> names = new TreeSet<>();
    for (CareAct act : acts) {
      boolean then =
          act.when()
              .from()
              .datesUntil(act.when().until().plusDays(1))
              .anyMatch(d -> d.getMonth() == month);
      if (then && CareRow.remainsOf(act.task().what()) == remains) {
        names.add(
            act.task().act() == Act.WEED ? "weeds" : act.task().what().toLowerCase(Locale.ROOT));
      }
    }
    return names;
  }

  /** The months in which trees that lose their leaves do so; none without such trees. */
  private static Set<Month> fall(Plan plan, Facts facts) {
    Set<Month> months = new TreeSet<>();
    boolean any =
        plan.all(Element.Tree.class).stream().anyMatch(t -> t.leaf() == Element.Leaf.DECIDUOUS);
    GrowingYear.of(facts)
        .filter(y -> any)
        .ifPresent(
            y -> {
              LocalDate first = y.ends().value().atYear(2021);
              first.datesUntil(first.plusDays(FALL_DAYS)).forEach(d -> months.add(d.getMonth()));
            });
    return months;
  }
}
