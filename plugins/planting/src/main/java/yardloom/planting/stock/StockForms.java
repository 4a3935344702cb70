package yardloom.planting.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.region.Region;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * The forms in which plants are bought: those of the plan before those of its region and the
 * shipped ones; a form of the plan takes the place of a shipped one of its name.
 */
public final class StockForms {
  private static final DataTable SHIPPED = DataTable.shipped(StockForms.class, "stock-forms.csv");
  private static final List<StockForm> FORMS =
      SHIPPED.rows().stream().map(StockForms::read).toList();

  /** What kinds come in that do not come as the others of their form. */
  private static final Map<String, String> BY_KIND =
      PlantCatalogue.byPlant(StockForms.class, "stock.csv", row -> row.text("stock"));

  private final List<StockForm> forms;

  private StockForms(List<StockForm> forms) {
    this.forms = List.copyOf(forms);
  }

  public static StockForms of(Plan plan, Optional<Region> region) {
    List<StockForm> all =
        new ArrayList<>(Region.ownFirst(region, plan.attributes().all(StockForm.KEY)));
    all.addAll(FORMS);
    return new StockForms(all);
  }

  /** The shipped forms, for lists. */
  public static Catalogue catalogue() {
    return new Catalogue(
        "stock",
        "Forms in which plants are bought, and minutes of one person to plant one",
        FORMS.stream()
            .map(
                f ->
                    new Catalogue.Row(
                        f.name(UnitSystem.US),
                        Map.of(
                            "metric",
                            f.name(UnitSystem.METRIC),
                            "minutes",
                            f.minutes()
                                .map(
                                    m ->
                                        Say.number(m.low())
                                            + ", "
                                            + Say.number(m.likely())
                                            + ", "
                                            + Say.number(m.high()))
                                .orElse("by length"),
                            "for",
                            String.join(
                                " ", f.suits().stream().map(Choices::text).sorted().toList()))))
            .toList());
  }

  /**
   * The first shipped form of that name.
   *
   * @throws PlanException (UNKNOWN_WORD) naming the nearest
   */
  static StockForm shipped(String name) {
    return FORMS.stream()
        .filter(f -> f.isCalled(name))
        .findFirst()
        .orElseThrow(
            () -> {
              List<String> known = FORMS.stream().map(f -> f.name(UnitSystem.US)).toList();
              String hint = Nearest.hint(name, known);
              return new PlanException(
                  ProblemCode.UNKNOWN_WORD,
                  "no shipped form is called '"
                      + name
                      + "'."
                      + (hint.isEmpty() ? " There is " + String.join(", ", known) + "." : hint));
            });
  }

  /**
   * The form of that name for a plant.
   *
   * @throws PlanException (UNKNOWN_WORD) naming the nearest, (CONTRADICTION) if it is not sold so
   */
  public StockForm named(String name, Plant plant) {
    List<StockForm> called = forms.stream().filter(f -> f.isCalled(name)).toList();
    if (called.isEmpty()) {
      List<String> known = forms.stream().flatMap(f -> f.names().stream()).toList();
      String hint = Nearest.hint(name, known);
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "nothing is sold as '"
              + name
              + "'."
              + (hint.isEmpty() ? " " + plant.name() + " comes as " + suiting(plant) + "." : hint)
              + " `stockForm` gives a form of your own.");
    }
    return called.stream()
        .filter(f -> f.suits().contains(StockForm.Suits.of(plant)))
        .findFirst()
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.CONTRADICTION,
                    plant.name()
                        + " is not sold as '"
                        + name
                        + "'; it comes as "
                        + suiting(plant)));
  }

  private String suiting(Plant plant) {
    String own = usualName(plant, false, true);
    return String.join(
        ", ",
        forms.stream()
            .filter(f -> f.suits().contains(StockForm.Suits.of(plant)))
            .map(f -> f.name(UnitSystem.US))
            // Crowns, canes and the like are told of the kinds that come so.
            .filter(n -> n.equals("plug") || !BY_KIND.containsValue(n) || n.equals(own))
            .distinct()
            .toList());
  }

  /**
   * What a kind comes in where nobody says.
   *
   * @param bare whether what sheds its leaves is planted without earth at its roots
   * @param resting whether crowns, canes and runners are sold without earth then
   */
  public StockForm usual(Plant plant, boolean bare, boolean resting) {
    return named(usualName(plant, bare, resting), plant);
  }

  private static String usualName(Plant plant, boolean bare, boolean resting) {
    if (plant.growth().start().isInDrills()) {
      return Choices.text(plant.growth().start());
    }
    String own = BY_KIND.get(plant.model());
    if (own != null && (resting || shipped(own).season() != StockForm.Season.RESTING)) {
      return own;
    }
    return switch (plant.growth().form()) {
      case TREE -> bare ? "bare root 4 ft" : "pot 5 gal";
      case SHRUB, VINE -> bare ? "bare root 18 in" : "pot 1 gal";
      case ANNUAL -> "plug";
      case HERB -> "pot 4 in";
    };
  }

  private static StockForm read(DataRow row) {
    Set<StockForm.Suits> suits = EnumSet.noneOf(StockForm.Suits.class);
    Arrays.stream(row.text("for").split(" "))
        .forEach(s -> suits.add(Choices.parse(StockForm.Suits.class, s)));
    Source source = row.source();
    return new StockForm(
        row.text("kind"),
        row.text("us"),
        row.text("metric"),
        suits,
        Choices.parse(StockForm.Season.class, row.text("season")),
        WorkTask.valueOf(row.text("task").toUpperCase(Locale.ROOT)),
        row.text("likely_min").isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Spread(
                    row.number("low_min"),
                    row.number("likely_min"),
                    row.number("high_min"),
                    "pace of work",
                    source)),
        1,
        Optional.empty());
  }
}
