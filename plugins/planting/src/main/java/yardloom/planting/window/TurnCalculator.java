package yardloom.planting.window;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.placing.Next;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.turn.formula.TurnDays;
import yardloom.planting.turn.formula.TurnDays.Stay;
import yardloom.planting.year.GrowingYear;

/** Gives the days of the crops that follow each other on one ground; nothing without a year. */
public final class TurnCalculator implements Calculator {
  /** Garlic and cover crops stand over winter. */
  private static final String OVER_WINTER = "fall planted";

  @Override
  public String id() {
    return "planting.turns";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(TurnPlan.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<KindWindows> windows = KindWindows.of(in);
    List<List<Turn>> grounds = new ArrayList<>();
    if (windows.isPresent()) {
      in.get(PlantPlaces.KEY).byGround().stream()
          .filter(chain -> chain.size() > 1)
          .forEach(chain -> grounds.add(turns(chain, windows.get(), in)));
    }
    out.give(TurnPlan.KEY, new TurnPlan(grounds));
  }

  private static List<Turn> turns(List<Planting> chain, KindWindows windows, Facts in) {
    GrowingYear year = GrowingYear.of(in).orElseThrow();
    List<TurnDays.Crop> crops = chain.stream().map(p -> crop(p, windows, year)).toList();
    List<Stay> stays = TurnDays.of(crops);
    List<Turn> turns = new ArrayList<>();
    LocalDate again = stays.get(0).planted().plusYears(1);
    for (int i = 0; i < chain.size(); i++) {
      Planting p = chain.get(i);
      Stay stay = stays.get(i);
      LocalDate end = stay.over().isBefore(again) ? stay.over() : again;
      turns.add(
          new Turn(
              p,
              stay.planted(),
              stay.over(),
              stay.latest(),
              stay.inTime() ? picked(p, stay, windows, year) : Optional.empty(),
              (int) (stay.planted().toEpochDay() - usual(p, windows).toEpochDay()),
              stay.days(),
              (int) (end.toEpochDay() - stay.planted().toEpochDay()),
              stay.inTime()));
    }
    return turns;
  }

  private static TurnDays.Crop crop(Planting p, KindWindows windows, GrowingYear year) {
    Plant plant = p.plant();
    Optional<Next> line = p.follows().map(Planting.Follows::line);
    Optional<Integer> said = line.flatMap(Next::days);
    int days = said.orElseGet(() -> plant.draw().crop().stages().map(Crop.Stages::total).orElse(1));
    List<TurnDays.Window> sown =
        windows.of(plant, days).periods().stream()
            .map(w -> new TurnDays.Window(w.from().value(), w.until().value()))
            .toList();
    Optional<MonthDay> lifted =
        plant.growth().window().equals(OVER_WINTER) && said.isEmpty()
            ? HarvestSeason.of(plant)
                .map(
                    s ->
                        MonthDay.from(
                            year.begins().value().atYear(TurnDays.YEAR).plusDays(s.until() + 1L)))
            : Optional.empty();
    return new TurnDays.Crop(
        sown,
        days,
        line.flatMap(Next::on),
        year.kills(plant) ? Optional.of(year.ends().value()) : Optional.empty(),
        lifted);
  }

  /**
   * Picking begins as long after planting as in a usual season, whose first day of planting and of
   * picking are known, or when the crop ripens if that is sooner; it ends with the season's length
   * or when the crop is over.
   */
  private static Optional<Turn.Picked> picked(
      Planting p, Stay stay, KindWindows windows, GrowingYear year) {
    Optional<HarvestSeason> season =
        HarvestSeason.of(p.plant()).map(s -> s.planted(p.plant(), year));
    if (season.isEmpty()) {
      return Optional.empty();
    }
    LocalDate frost = year.begins().value().atYear(TurnDays.YEAR);
    long after = frost.toEpochDay() - usual(p, windows).toEpochDay();
    LocalDate last = stay.over().minusDays(1);
    LocalDate from;
    LocalDate until = last;
    if (p.plant().growth().window().equals(OVER_WINTER)) {
      from = last.minusDays(season.get().until() - (long) season.get().from());
    } else {
      from = stay.planted().plusDays(season.get().from() + after);
      LocalDate ripe = stay.planted().plusDays(stay.days() - late(p, stay.days()));
      from = ripe.isBefore(from) ? ripe : from;
      LocalDate end = stay.planted().plusDays(season.get().until() + after);
      until = end.isBefore(last) ? end : last;
    }
    return from.isAfter(until) ? Optional.empty() : Optional.of(new Turn.Picked(from, until));
  }

  /** The first day of the growing year on which a kind is usually planted. */
  private static LocalDate usual(Planting p, KindWindows windows) {
    return windows.of(p.plant()).periods().get(0).from().value().atYear(TurnDays.YEAR);
  }

  /** The days of a crop's last stage, in which it ripens (FAO-56, Table 11). */
  private static long late(Planting p, int days) {
    return p.plant()
        .draw()
        .crop()
        .stages()
        .map(s -> Math.round((double) days * s.late() / s.total()))
        .orElse(0L);
  }
}
