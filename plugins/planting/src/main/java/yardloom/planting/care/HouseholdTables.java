package yardloom.planting.care;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.bay.BayWords;

/** What a household looks for and does, the same in every yard, where the plan plants anything. */
public final class HouseholdTables implements TableMaker {
  private static final String ESTABLISHMENT = "first-days";
  private static final String BY = "By: ";
  private static final String WEEDS = "weeds-through";
  private static final String BAY = "compost-bay";

  private final String id;
  private final String title;
  private final List<Column> columns;
  private final String file;

  private HouseholdTables(String id, String title, String file, Column... columns) {
    this.id = id;
    this.title = title;
    this.columns = List.of(columns);
    this.file = file;
  }

  /** What to look for each week while plants root. */
  public static HouseholdTables establishment() {
    return new HouseholdTables(
        ESTABLISHMENT,
        "First 45 days from each planting",
        "establishment.csv",
        Column.text("days", "Days"),
        Column.text("look", "If you see"),
        Column.text("do", "Do"));
  }

  /** Which weeds come through the sheet, and what to do. */
  public static HouseholdTables weeds() {
    return new HouseholdTables(
        WEEDS,
        "Weeds that come through",
        "weeds-through.csv",
        Column.text("weed", "Weed"),
        Column.text("do", "Do"));
  }

  /** Where weeds and prunings go, and what never does. */
  public static HouseholdTables bay() {
    return new HouseholdTables(
        BAY,
        "Weeds and prunings stay on site",
        "bay.csv",
        Column.text("what", "What"),
        Column.text("where", "Where to"));
  }

  /** Where the bay is, or what to keep for one. */
  private static String bays(Plan plan) {
    List<String> bays =
        plan.all(Element.Structure.class).stream()
            .filter(s -> s.attributes().get(BayWords.BAY).isPresent())
            .map(s -> s.id().name())
            .toList();
    return bays.isEmpty()
        ? "No bay is drawn on the plan: keep a place of 4 by 4 ft (1.2 by 1.2 m) for one, by a"
            + " path, off walls and windows."
        : "On the plan: " + NameRuns.text(bays) + ".";
  }

  /** Whether a yard has what a row speaks of; without a take-off it is taken as the usual one. */
  private static boolean holds(String needs, Facts facts) {
    List<MulchSurface> surfaces = facts.all(YardFacts.SURFACES);
    boolean card =
        surfaces.isEmpty()
            || surfaces.stream().anyMatch(s -> !s.lifts(Material.CARDBOARD).isEmpty());
    return switch (needs) {
      case "cardboard" -> card;
      case "no cardboard" -> !card;
      case "drip" -> !facts.all(YardFacts.DRIPLINES).isEmpty();
      default -> true;
    };
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY, YardFacts.SURFACES, YardFacts.DRIPLINES);
  }

  @Override
  public OnPaper onPaper() {
    return switch (id) {
      case ESTABLISHMENT -> OnPaper.ALWAYS;
      case BAY -> OnPaper.REPORT;
      default -> OnPaper.IF_ROOM;
    };
  }

  @Override
  public Set<SheetUse> uses() {
    return id.equals(WEEDS) ? Set.of(SheetPage.CLIENT) : Set.of();
  }

  /** Without the sources, which stand in the report. */
  @Override
  public Table forSheet(Plan plan, Facts facts, Table made) {
    List<String> notes = made.notes().stream().filter(n -> !n.startsWith(BY)).toList();
    return new Table(made.id(), made.title(), made.columns(), made.rows(), notes, made.totals());
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = Table.titled(id, title);
    columns.forEach(table::column);
    boolean plants = facts.all(CareAct.KEY).stream().anyMatch(a -> a.task().act() == Act.PLANT);
    if (!plants) {
      return table.build();
    }
    Set<String> sources = new TreeSet<>();
    for (DataRow row : DataTable.shipped(HouseholdTables.class, file).rows()) {
      if (!holds(row.text("needs"), facts)) {
        continue;
      }
      table.row(columns.stream().map(c -> Cell.text(row.text(c.id()))).toList());
      Source source = CareRow.sources().cited(row, "source");
      sources.add(source.cite());
    }
    if (id.equals(BAY)) {
      table.note(bays(plan));
    }
    return table.note(BY + String.join("; ", sources) + ".").build();
  }
}
