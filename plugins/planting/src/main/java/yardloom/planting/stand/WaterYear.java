package yardloom.planting.stand;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.ClimateNormals;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.stand.formula.AnnualCurve;
import yardloom.planting.stand.formula.CropCurve;
import yardloom.planting.stand.formula.GrowingSeason;
import yardloom.planting.stand.formula.StageShares;
import yardloom.planting.turn.Turn;

/**
 * When the plants of a plan draw water, and how much.
 *
 * <p>What stays draws over the growing season of the climate. Annuals draw from the first day on
 * which they are usually planted over the days of their crop, and once more after a second sowing;
 * where no frost dates are known, they are planted when the growing season begins.
 */
record WaterYear(
    boolean southern, Optional<List<Temperature>> means, Map<String, PlantingWindow> windows) {
  private static final List<Integer> NORTHERN = List.of(3, 4, 5, 6, 7, 8, 9);
  private static final List<Integer> SOUTHERN = List.of(9, 10, 11, 0, 1, 2, 3);
  private static final String SECOND = "second sowing";

  static WaterYear of(Plan plan, Facts in) {
    Map<String, PlantingWindow> windows = new TreeMap<>();
    in.all(YardFacts.PLANTING_WINDOWS).forEach(w -> windows.put(w.plant(), w));
    Optional<List<Temperature>> means =
        in.find(YardFacts.CLIMATE)
            .map(c -> c.months().stream().map(ClimateNormals.Month::mean).toList());
    return new WaterYear(plan.isSouthern(), means, windows);
  }

  /** Those of a crop among others that follow each other on one ground. */
  List<Double> months(Turn turn) {
    Crop crop = turn.planting().plant().draw().crop();
    StageShares shares = crop.stages().map(StageShares::of).orElse(StageShares.RECALLED);
    return turn.watered() <= 0
        ? AnnualCurve.NOTHING
        : AnnualCurve.monthly(
            crop.kc(), shares, MonthDay.from(turn.planted()), turn.cropDays(), turn.watered());
  }

  /** The crop coefficients of January to December. */
  List<Double> months(Plant plant, Crop.Coefficients kc) {
    StageShares shares =
        plant.draw().crop().stages().map(StageShares::of).orElse(StageShares.RECALLED);
    Optional<Integer> days = cropDays(plant);
    if (days.isEmpty()) {
      return CropCurve.monthly(kc, shares, plant.growth().season(), season(plant));
    }
    List<Double> year = AnnualCurve.NOTHING;
    for (MonthDay planted : planted(plant)) {
      year = AnnualCurve.more(year, AnnualCurve.monthly(kc, shares, planted, days.get()));
    }
    return year;
  }

  /** Who says so, and over which days. */
  Source source(Plant plant, boolean inGrass) {
    String over = cropDays(plant).isPresent() ? overDays(plant) : "spread over the growing season";
    return source(plant, inGrass, over);
  }

  Source source(Turn turn) {
    String over =
        "planted on "
            + TableFormat.day(MonthDay.from(turn.planted()))
            + ", "
            + turn.watered()
            + " of "
            + turn.cropDays()
            + " days";
    return source(turn.planting().plant(), false, over);
  }

  private static Source source(Plant plant, boolean inGrass, String over) {
    Source row = plant.draw().source();
    String crop = ", " + plant.draw().crop().name() + (inGrass ? " with grass below" : "");
    String stages =
        plant
            .draw()
            .crop()
            .stages()
            .map(WaterYear::proportions)
            .orElse("by recalled shares of 15, 25, 40 and 20 %");
    return new Source(
        row.title(),
        row.publisher(),
        row.year(),
        row.locator() + crop + "; " + over + " " + stages,
        row.standing());
  }

  private String overDays(Plant plant) {
    List<String> days = planted(plant).stream().map(TableFormat::day).toList();
    return "planted on "
        + String.join(" and ", days)
        + ", "
        + cropDays(plant).orElseThrow()
        + " days";
  }

  /** The days of an annual's crop; empty for what stays, and for crops without stages. */
  private static Optional<Integer> cropDays(Plant plant) {
    return plant.growth().season().isAnnual()
        ? plant.draw().crop().stages().map(Crop.Stages::total)
        : Optional.empty();
  }

  /** The days on which an annual is planted; none where it is never warm enough. */
  private List<MonthDay> planted(Plant plant) {
    PlantingWindow window = windows.get(plant.name());
    List<MonthDay> days = new ArrayList<>();
    if (window == null) {
      season(plant).stream().findFirst().ifPresent(m -> days.add(MonthDay.of(m + 1, 1)));
      return days;
    }
    days.add(window.periods().get(0).from().value());
    window.periods().stream()
        .filter(p -> p.how().equals(SECOND))
        .forEach(p -> days.add(p.from().value()));
    return days;
  }

  /** Without a climate: April to October, in the south October to April (common practice). */
  private List<Integer> season(Plant plant) {
    if (means.isEmpty()) {
      return southern ? SOUTHERN : NORTHERN;
    }
    boolean tender = plant.growth().season() == Plant.Season.TENDER_ANNUAL;
    return GrowingSeason.months(means.get(), tender ? GrowingSeason.TENDER : GrowingSeason.HARDY);
  }

  private static String proportions(Crop.Stages s) {
    return "as "
        + s.initial()
        + ", "
        + s.development()
        + ", "
        + s.middle()
        + " and "
        + s.late()
        + " days of Table 11 ("
        + s.planted()
        + ", "
        + s.region()
        + ")";
  }
}
