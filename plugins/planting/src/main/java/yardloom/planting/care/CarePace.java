package yardloom.planting.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.built.Barrier;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.mulch.TopUp;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;

/**
 * How much of a yard an act is for, and how long it takes there: beds, mulched ground, paths,
 * hedges and chips to add, as the plan and the take-off have them. Plants are counted by {@link
 * Lots}.
 */
final class CarePace {
  /** A month of visits. */
  private static final int MONTH_DAYS = 30;

  private final Plan plan;
  private final Facts in;
  private final Lots lots;

  CarePace(Plan plan, Facts in, Lots lots) {
    this.plan = plan;
    this.in = in;
    this.lots = lots;
  }

  /** Whether the yard has any of what an act is for. */
  boolean applies(CareRow row, int season) {
    return switch (row.pace().per()) {
      case YARD, YARD_A_MONTH -> beginsDrip();
      case CUBIC_YARD -> added(season).isPresent();
      case TEN_FEET -> hedges().metres() > 0;
      default -> area(row.who()).squareMetres() > 0;
    };
  }

  /** Whether the first dripline of the yard is laid with this part of the plan. */
  private boolean beginsDrip() {
    List<Element> dripped =
        in.all(YardFacts.DRIPLINES).stream().flatMap(d -> plan.element(d.in()).stream()).toList();
    return dripped.stream().anyMatch(plan::isOwn)
        && dripped.stream().allMatch(e -> plan.isOwn(e) || e.turn() == PartTurn.LATER);
  }

  /** How long an act takes from one day to another, both included. */
  Derived<TimeSpan> hours(CareRow row, int season, LocalDate from, LocalDate until) {
    int days = (int) (until.toEpochDay() - from.toEpochDay()) + 1;
    double minutes = row.pace().minutes();
    Area area = area(row.who());
    return switch (row.pace().per()) {
      case YARD -> by("minutes / 60", row).gives(TimeSpan.minutes(minutes));
      case YARD_A_MONTH ->
          by("minutes × up(days / 30) / 60", row)
              .from("days", days)
              .gives(TimeSpan.minutes(minutes * visits(days)));
      case TEN_FEET ->
          by("minutes × hedge in ft / 10 / 60", row)
              .from("hedge", hedges())
              .gives(TimeSpan.minutes(minutes * hedges().feet() / 10));
      case CUBIC_YARD -> {
        Derived<Volume> add = added(season).orElseThrow();
        yield by("minutes × chips in cu yd / 60", row)
            .from("chips", add)
            .gives(TimeSpan.minutes(minutes * add.value().cubicYards()));
      }
      case HUNDRED_SQUARE_FEET_A_WEEK ->
          by("minutes × area in sq ft / 100 / 60 × days / 7", row)
              .from("area", area)
              .from("days", days)
              .gives(TimeSpan.minutes(minutes * area.squareFeet() / 100 * days / 7));
      default ->
          by("minutes × area in sq ft / 100 / 60", row)
              .from("area", area)
              .gives(TimeSpan.minutes(minutes * area.squareFeet() / 100));
    };
  }

  /** How long it takes for so many plants. */
  Derived<TimeSpan> hoursFor(CareRow row, int plants, LocalDate from, LocalDate until) {
    if (row.pace().per() == CareRow.Per.PLANT_A_MONTH) {
      int days = (int) (until.toEpochDay() - from.toEpochDay()) + 1;
      return Derived.by("hours = minutes each × plants × up(days / 30) / 60", row.pace().source())
          .from("minutes each", row.pace().minutes())
          .from("plants", plants)
          .from("days", days)
          .gives(TimeSpan.minutes(row.pace().minutes() * plants * visits(days)));
    }
    return Derived.by("hours = minutes each × plants / 60", row.pace().source())
        .from("minutes each", row.pace().minutes())
        .from("plants", plants)
        .gives(TimeSpan.minutes(row.pace().minutes() * plants));
  }

  private static Derived.Builder by(String formula, CareRow row) {
    return Derived.by("hours = " + formula, row.pace().source())
        .from("minutes", row.pace().minutes());
  }

  private static int visits(int days) {
    return (days + MONTH_DAYS - 1) / MONTH_DAYS;
  }

  /** The ground an act is for; parts of a list add up. */
  private Area area(String who) {
    Area area = Area.ZERO;
    for (String part : who.split("; ")) {
      area =
          area.plus(
              switch (part) {
                case "planted" -> lots.ground(false);
                case "annual bed" -> lots.ground(true);
                case "deep mulch" ->
                    covered(Set.of(SurfaceKind.MULCHED_GROUND, SurfaceKind.TREE_RING));
                case "path" -> covered(Set.of(SurfaceKind.PATH));
                default -> Area.ZERO;
              });
    }
    return area;
  }

  private Area covered(Set<SurfaceKind> kinds) {
    return in.all(YardFacts.SURFACES).stream()
        .filter(s -> kinds.contains(s.kind()))
        .map(MulchSurface::area)
        .map(Derived::value)
        .reduce(Area.ZERO, Area::plus);
  }

  private Length hedges() {
    return plan.all(Element.Fence.class).stream()
        .filter(plan::isOwn)
        .filter(Barrier::isHedge)
        .map(f -> f.line().length())
        .reduce(Length.ZERO, Length::plus);
  }

  /** Chips to add at the end of a season; what is known of the last year holds from then on. */
  Optional<Derived<Volume>> added(int season) {
    List<TopUp> years = in.all(YardFacts.TOP_UPS);
    return years.stream()
        .filter(t -> t.year() == Math.min(season, years.size()))
        .map(TopUp::add)
        .findFirst();
  }
}
