package yardloom.kernel.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.recall.Recall;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** One yard of two beds, 2 m × 3 m and 5 m × 3 m, through everything that a plugin may bring. */
class StudyTest {
  private static final Source BOOK = Source.commonPractice("test");
  private static final FactKey<Area> AREA = FactKey.one("test.area", Area.class);
  private static final FactKey<String> PRICE =
      FactKey.one("test.price", String.class).called("price of compost");
  private static final FactKey<String> COST =
      FactKey.one("test.cost", String.class).called("cost of compost");
  private static final FactKey<String> TAX =
      FactKey.one("test.tax", String.class).called("tax on compost");

  private enum Use implements SheetUse {
    PLANTING,
    FINAL_WALK
  }

  private static Plan plan() {
    return plan(5);
  }

  private static Shape ground(double x, double width) {
    return Shape.rectangle(Point.metres(x, 0), Length.metres(width), Length.metres(3));
  }

  private static void bed(Draft draft, String name, double x, double width) {
    draft.add(
        new ElementId(ElementKind.BED, name),
        new SourceRef("a.groovy", 1, 1),
        c -> new Element.Bed(c, ground(x, width), Element.BedUse.ANNUAL));
  }

  private static Calculator calculator(
      String id, Set<FactKey<?>> needs, FactKey<?> gives, Giving giving) {
    return new Calculator() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public Set<FactKey<?>> needs() {
        return needs;
      }

      @Override
      public Set<FactKey<?>> gives() {
        return Set.of(gives);
      }

      @Override
      public void compute(Plan plan, Facts in, Sink out) {
        giving.give(plan, in, out);
      }
    };
  }

  private interface Giving {
    void give(Plan plan, Facts in, Sink out);
  }

  private static final Calculator AREAS =
      calculator(
          "test.areas",
          Set.of(),
          AREA,
          (plan, in, out) ->
              out.give(
                  AREA,
                  Area.squareMetres(
                      plan.all(Element.Bed.class).stream()
                          .mapToDouble(b -> b.shape().area().squareMetres())
                          .sum())));

  private static final Calculator COSTS =
      calculator(
          "test.costs",
          Set.of(AREA, PRICE),
          COST,
          (plan, in, out) -> out.give(COST, in.get(PRICE)));

  private static final Calculator TAXES =
      calculator(
          "test.taxes",
          Set.of(COST),
          TAX,
          (plan, in, out) -> out.give(TAX, in.get(COST) + " + 6 %"));

  /** The table of the area, which on sheets has another title. */
  private static TableMaker areas(String id, boolean filled, Set<Use> uses) {
    return new TableMaker() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public Set<FactKey<?>> reads() {
        return Set.of(AREA);
      }

      @Override
      public Set<? extends SheetUse> uses() {
        return uses;
      }

      @Override
      public Table make(Plan plan, Facts facts) {
        Table.Builder table =
            Table.titled(id, "All ground").column(Column.of("area", "Area", Measure.AREA));
        return filled ? table.row(Cell.of(facts.get(AREA))).build() : table.build();
      }

      @Override
      public Table forSheet(Plan plan, Facts facts, Table made) {
        return new Table(id, "Ground", made.columns(), made.rows(), made.notes(), 0);
      }
    };
  }

  /** A maker that says what it can of its table. */
  private static final TableMaker ORDERS =
      new TableMaker() {
        @Override
        public String id() {
          return "orders";
        }

        @Override
        public OnPaper onPaper() {
          return OnPaper.ALWAYS;
        }

        @Override
        public Optional<Audience> audience() {
          return Optional.of(Audience.NURSERY);
        }

        @Override
        public List<Chart> charts() {
          return List.of(Chart.of("loads", "Loads", Chart.Kind.BARS, "loads"));
        }

        @Override
        public Table make(Plan plan, Facts facts) {
          return Table.titled("orders", "Orders")
              .column(Column.of("loads", "Loads", Measure.COUNT))
              .row(Cell.number(4))
              .build();
        }
      };

  private static TestPlugin plugin(
      List<Calculator> calculators, List<TableMaker> tables, List<SheetMaker> sheets) {
    return new TestPlugin("test", calculators, List.of(), List.of(), tables, sheets, List.of());
  }

  private static Outcome outcome(TestPlugin... plugins) {
    return new Study(PluginLoader.of(List.of(plugins))).of(plan());
  }

  @Test
  void missingFact_isToldOnce_notForWhatFallsAwayBecauseOfIt() {
    Outcome outcome = outcome(plugin(List.of(AREAS, COSTS, TAXES), List.of(), List.of()));
    assertEquals(1, outcome.findings().size());
    Finding note = outcome.findings().get(0);
    assertEquals(Severity.NOTE, note.severity());
    assertEquals(
        "nothing gives the price of compost, so this was not worked out: cost of compost",
        note.text());
    assertEquals(Set.of("test.costs", "test.taxes"), outcome.results().skipped().keySet());
    assertEquals(Area.squareMetres(21), outcome.results().get(AREA), "2 × 3 + 5 × 3");
    assertFalse(outcome.hasErrors());
  }

  @Test
  void missingFact_thatACheckExplains_isNotToldAgain() {
    Check explains =
        new Check() {
          @Override
          public String id() {
            return "test.priced";
          }

          @Override
          public Set<FactKey<?>> explains() {
            return Set.of(PRICE);
          }

          @Override
          public List<Finding> run(Plan plan, Facts facts) {
            assertThrows(IllegalStateException.class, () -> facts.find(AREA), "not declared");
            return List.of(Finding.of("test.priced", Severity.ERROR, "no price", "ask", BOOK));
          }
        };
    Outcome outcome =
        outcome(
            new TestPlugin(
                "test",
                List.of(AREAS, COSTS),
                List.of(explains),
                List.of(),
                List.of(),
                List.of(),
                List.of()));
    assertEquals(List.of("no price"), outcome.findings().stream().map(Finding::text).toList());
    assertTrue(outcome.hasErrors());
    assertEquals(
        List.of("findings"), outcome.tables().stream().map(Table::id).toList(), "no other table");
  }

  @Test
  void checks_runInTheOrderOfTheirIds_andErrorsComeFirst() {
    List<String> ran = new ArrayList<>();
    TestPlugin plugin =
        TestPlugin.checking(
            TestPlugin.check(
                "test.b",
                plan -> {
                  ran.add("b");
                  return List.of(Finding.of("test.b", Severity.ERROR, "bad", "", BOOK));
                }),
            TestPlugin.check(
                "test.a",
                plan -> {
                  ran.add("a");
                  return List.of(Finding.of("test.a", Severity.WARNING, "so so", "", BOOK));
                }));
    List<Finding> findings = new Study(PluginLoader.of(List.of(plugin))).check(plan());
    assertEquals(List.of("a", "b"), ran);
    assertEquals(List.of("bad", "so so"), findings.stream().map(Finding::text).toList());
  }

  @Test
  void tables_areSortedById_withoutEmptyOnes_andKnowTheirReaders() {
    Outcome outcome =
        outcome(
            plugin(
                List.of(AREAS),
                List.of(ORDERS, areas("empty", false, Set.of()), areas("areas", true, Set.of())),
                List.of()));
    assertEquals(List.of("areas", "orders"), outcome.tables().stream().map(Table::id).toList());
    Table areas = outcome.tables().get(0);
    assertEquals("All ground", areas.title());
    assertEquals(Area.squareMetres(21), areas.rows().get(0).get(0).value().orElseThrow());
    assertEquals(new Reading(Audience.CONTRACTOR, List.of()), outcome.reading(areas));
    Reading orders = outcome.reading(outcome.tables().get(1));
    assertEquals(Audience.NURSERY, orders.audience());
    assertEquals(List.of("loads"), orders.charts().stream().map(Chart::id).toList());
    assertEquals(OnPaper.ALWAYS, outcome.onPaper().get("orders"));
    assertEquals(OnPaper.IF_ROOM, outcome.onPaper().get("areas"), "unless the maker says more");
    Table unknown = Table.titled("x", "X").build();
    assertEquals(Reading.PLAIN, outcome.reading(unknown));
  }

  /** Takes what is offered for planting. */
  private static SheetMaker planting(String id, int... numbers) {
    return new SheetMaker() {
      @Override
      public String id() {
        return id;
      }

      @Override
      public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
        List<SheetPlan> sheets = new ArrayList<>();
        for (int number : numbers) {
          List<Panel> panels = new ArrayList<>();
          offers.tables(Use.PLANTING).forEach(t -> panels.add(new Panel.TableBlock(t)));
          panels.add(Panel.SitePlan.yardWith(offers.layers(Use.PLANTING, Use.FINAL_WALK)));
          sheets.add(new SheetPlan(number, id.replace('.', '-'), "Planting", panels));
        }
        return sheets;
      }
    };
  }

  @Test
  void sheets_takeWhatIsOfferedForTheirUse_inTheFormForSheets() {
    TestPlugin plugin =
        new TestPlugin(
            "test",
            List.of(AREAS),
            List.of(),
            List.of(
                offered(TestPlugin.painter(PLANTS, List.of(), List.of()), Use.FINAL_WALK),
                TestPlugin.painter(GROUND, List.of(), List.of())),
            List.of(
                ORDERS,
                areas("zones", true, Set.of(Use.PLANTING)),
                areas("areas", true, Set.of(Use.PLANTING, Use.FINAL_WALK)),
                areas("walk", true, Set.of(Use.FINAL_WALK)),
                areas("empty", false, Set.of(Use.PLANTING))),
            List.of(planting("test.b", 30, 4), planting("test.a", 4)),
            List.of());
    List<SheetPlan> sheets = outcome(plugin).sheets();
    assertEquals(
        List.of("4 test-a", "4 test-b", "30 test-b"),
        sheets.stream().map(s -> s.number() + " " + s.id()).toList());
    List<Panel> panels = sheets.get(0).panels();
    assertEquals(
        List.of("areas Ground", "zones Ground"),
        panels.subList(0, 2).stream()
            .map(p -> ((Panel.TableBlock) p).table())
            .map(t -> t.id() + " " + t.title())
            .toList());
    assertEquals(
        new Panel.SitePlan(Panel.SitePlan.Base.YARD, Set.of("test.plants")), panels.get(2));
    assertEquals(3, panels.size());
    assertEquals("final-walk", Use.FINAL_WALK.sheetId());
  }

  @Test
  void sheetMaker_thatTakesNothingOfOthers_isAskedWithoutOffers() {
    SheetMaker plain =
        new SheetMaker() {
          @Override
          public String id() {
            return "test.plain";
          }

          @Override
          public List<SheetPlan> make(Plan plan, Facts facts) {
            return List.of(new SheetPlan(7, "plain", "Plain", List.of()));
          }
        };
    assertEquals(
        List.of(new SheetPlan(7, "plain", "Plain", SheetPlan.Format.SHEET, List.of(), true)),
        outcome(plugin(List.of(), List.of(), List.of(plain))).sheets());
  }

  private static final Layer GROUND = new Layer("test.ground", "Ground", Layer.Band.GROUND);
  private static final Layer PLANTS = new Layer("test.plants", "Plants", Layer.Band.PLANTS);
  private static final Layer EDGES = new Layer("test.edges", "Edges", Layer.Band.PLANTS);

  private static Painter offered(Painter painter, Use use) {
    return new Painter() {
      @Override
      public Layer layer() {
        return painter.layer();
      }

      @Override
      public boolean shownByDefault() {
        return false;
      }

      @Override
      public boolean partOfYard() {
        return true;
      }

      @Override
      public Set<? extends SheetUse> uses() {
        return Set.of(use);
      }

      @Override
      public List<Mark> paint(Plan plan, Facts facts) {
        return painter.paint(plan, facts);
      }
    };
  }

  @Test
  void layers_haveTheMarksOfTheirPainters_lowestFirst_withoutEmptyOnes() {
    Mark region = new Mark.Region(ground(0, 2), Palette.BED, "bed a");
    LegendEntry entry = LegendEntry.area("bed", Palette.BED);
    TestPlugin plugin =
        new TestPlugin(
            "test",
            List.of(),
            List.of(),
            List.of(
                offered(
                    TestPlugin.painter(PLANTS, List.of(region, region), List.of()), Use.PLANTING),
                TestPlugin.painter(EDGES, List.of(region), List.of()),
                TestPlugin.painter(
                    new Layer("test.none", "None", Layer.Band.SUN), List.of(), List.of(entry)),
                TestPlugin.painter(GROUND, List.of(region), List.of(entry))),
            List.of(),
            List.of(),
            List.of());
    Outcome outcome = outcome(plugin);
    assertEquals(List.of(GROUND, EDGES, PLANTS), List.copyOf(outcome.layers().keySet()));
    assertEquals(
        new DrawnLayer(List.of(region), List.of(entry), true, false), outcome.layers().get(GROUND));
    assertEquals(
        new DrawnLayer(List.of(region, region), List.of(), false, true),
        outcome.layers().get(PLANTS));
  }

  @Test
  void cautions_saidTwice_arePrintedOnce_thoseBeforeWorkFirst() {
    Caution gloves = new Caution("wear gloves", BOOK);
    Caution call = new Caution("call before you dig", BOOK, Caution.When.BEFORE_WORK);
    Caution lift = new Caution("lift in pairs", BOOK).on(Use.PLANTING);
    Outcome outcome = outcome(cautious("one", gloves, call), cautious("two", gloves, lift, call));
    assertEquals(List.of(call, gloves, lift), outcome.cautions());
    assertEquals(Optional.of(Use.PLANTING), lift.where());
    assertEquals("lift in pairs", lift.text());
    assertEquals(Caution.When.AT_WORK, lift.when());
  }

  private static TestPlugin cautious(String id, Caution... cautions) {
    return new TestPlugin(
        id, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(cautions));
  }

  /** A second run with what is remembered of the first lets nobody work but who has to. */
  @Test
  void rememberedRun_givesTheSame_andOffersOfAnotherTableLetItsSheetBeMadeAnew() {
    Recall recall = new Recall();
    Study study = new Study(PluginLoader.of(List.of(offering())));
    Outcome first = study.of(plan(), recall);
    recall.keep();
    Outcome second = study.of(plan(), recall);
    recall.keep();
    assertEquals(List.of(), List.copyOf(recall.worked()));
    assertEquals(first.tables(), second.tables());
    assertEquals(first.sheets(), second.sheets());
    Outcome wider = study.of(plan(6), recall);
    recall.keep();
    assertTrue(recall.worked().contains("sheets test.a"), recall.worked().toString());
    Table shown = ((Panel.TableBlock) wider.sheets().get(0).panels().get(0)).table();
    assertEquals(
        Area.squareMetres(24), shown.rows().get(0).get(0).value().orElseThrow(), "2 × 3 + 6 × 3");
  }

  /**
   * The sheet that is looked at is there before anybody works whom it does not show. The whole run
   * afterwards is that without it.
   */
  @Test
  void sheetAhead_isMadeBeforeOthersWork_andTheWholeRunFindsItMade() {
    boolean[] shown = {true};
    Calculator slow =
        calculator(
            "test.a-slow",
            Set.of(AREA),
            PRICE,
            (plan, in, out) -> {
              assertTrue(shown[0], "the sheet has not been drawn yet");
              out.give(PRICE, in.get(AREA) + " at 4 each");
            });
    Calculator fixed =
        calculator("test.fixed", Set.of(), TAX, (plan, in, out) -> out.give(TAX, "none"));
    Study study =
        new Study(
            PluginLoader.of(
                List.of(
                    plugin(
                        List.of(AREAS, slow, fixed),
                        List.of(areas("areas", true, Set.of(Use.PLANTING))),
                        List.of(planting("test.a", 4), planting("test.b", 5))))));
    Recall recall = new Recall();
    Outcome first = study.of(plan(), recall);
    recall.keep();

    shown[0] = false;
    Outcome ahead = study.ahead(plan(6), recall, first, "test-a").orElseThrow();
    assertEquals(
        List.of("calculator test.areas", "sheets test.a", "table areas"),
        List.copyOf(recall.worked()));
    recall.keepPart();
    Table now = ((Panel.TableBlock) ahead.sheets().get(0).panels().get(0)).table();
    assertEquals(
        Area.squareMetres(24), now.rows().get(0).get(0).value().orElseThrow(), "2 × 3 + 6 × 3");
    assertEquals(first.sheets().get(1), ahead.sheets().get(1), "the other has not been made anew");
    assertEquals(first.tables(), ahead.tables());

    shown[0] = true;
    Outcome whole = study.of(plan(6), recall);
    recall.keep();
    // Who had nothing to do with the edit is remembered over the part that never asked.
    assertEquals(List.of("calculator test.a-slow", "sheets test.b"), List.copyOf(recall.worked()));
    assertEquals(ahead.sheets().get(0), whole.sheets().get(0));
    assertEquals(
        new Study(PluginLoader.of(List.of(offering()))).of(plan(6)).tables(), whole.tables());
    assertTrue(study.ahead(plan(6), recall, whole, "no-such-sheet").isEmpty());
  }

  private static TestPlugin offering() {
    return plugin(
        List.of(AREAS),
        List.of(areas("areas", true, Set.of(Use.PLANTING))),
        List.of(planting("test.a", 4)));
  }

  private static Plan plan(double width) {
    Draft draft = new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.METRIC, "$"));
    bed(draft, "a", 0, 2);
    bed(draft, "b", 10, width);
    return draft.freeze();
  }
}
