package yardloom.materials.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.LocalRule;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.Loads;
import yardloom.materials.data.BulkData;
import yardloom.materials.data.PriceBook;
import yardloom.materials.data.WorkData;
import yardloom.materials.model.LocalRate;
import yardloom.materials.model.LocalRate.Kind;
import yardloom.materials.model.LocalSoil;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Region;
import yardloom.materials.model.SoilChoice;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.model.Spread;

/**
 * Everything that differs by place, in one order: what the plan says, else what the regional file
 * says, else the shipped generic row.
 *
 * <p>A statement is the region's if it stands in the file that says {@code region}.
 */
public final class LocalData {
  private final Plan plan;
  private final Optional<Region> region;

  private LocalData(Plan plan) {
    this.plan = plan;
    this.region = plan.attributes().get(MaterialKeys.REGION);
  }

  public static LocalData of(Plan plan) {
    return new LocalData(plan);
  }

  public Optional<Region> region() {
    return region;
  }

  /** {@link LocalRule#PLAN} or {@link LocalRule#REGIONAL}, by the file of the statement. */
  public int rank(SourceRef place) {
    return region.filter(r -> r.place().file().equals(place.file())).isPresent()
        ? LocalRule.REGIONAL
        : LocalRule.PLAN;
  }

  /** The plan's own statements, then the region's, each in the order written. */
  public <T> List<T> ranked(AttributeKey<T> key) {
    List<T> sorted = new ArrayList<>(of(key, LocalRule.PLAN));
    sorted.addAll(regional(key));
    return List.copyOf(sorted);
  }

  /** What the regional file says. */
  public <T> List<T> regional(AttributeKey<T> key) {
    return of(key, LocalRule.REGIONAL);
  }

  private <T> List<T> of(AttributeKey<T> key, int rank) {
    return plan.attributes().all(key).stream()
        .filter(e -> rank(e.place()) == rank)
        .map(Entry::value)
        .toList();
  }

  public PriceBook prices() {
    return PriceBook.demo().with(ranked(MaterialKeys.PRICE));
  }

  private Optional<LocalRate> rate(Kind kind, String item) {
    return ranked(MaterialKeys.LOCAL_RATE).stream()
        .filter(r -> r.kind() == kind && r.item().equals(item))
        .findFirst();
  }

  /** Hours of one person for one unit of the task, and the unit. */
  public LocalRate labour(String task) {
    return rate(Kind.LABOUR, task)
        .orElseGet(
            () -> new LocalRate(Kind.LABOUR, task, WorkData.unit(task), WorkData.hours(task)));
  }

  /** Cubic yards of one truckload. */
  public Spread cubicYardsPerLoad(String material) {
    return rate(Kind.LOAD, material)
        .map(LocalRate::value)
        .orElseGet(() -> BulkData.cubicYardsPerLoad(material));
  }

  /** Pounds per cubic yard as delivered. */
  public Spread poundsPerCubicYard(String material) {
    return rate(Kind.DENSITY, material)
        .map(LocalRate::value)
        .orElseGet(() -> BulkData.poundsPerCubicYard(material));
  }

  public Loads loads(String material, Derived<Volume> order) {
    return Loads.of(order, cubicYardsPerLoad(material), poundsPerCubicYard(material));
  }

  /**
   * The yard's soil: as tested or named, else empty.
   *
   * @throws PlanException (UNKNOWN_WORD) for a name that no {@code localSoil} gives
   */
  public Optional<SoilGiven> soil() {
    Optional<SoilGiven> tested = plan.attributes().get(MaterialKeys.SOIL);
    return tested.isPresent()
        ? tested
        : plan.attributes().get(MaterialKeys.SOIL_CHOICE).map(this::named);
  }

  private SoilGiven named(SoilChoice choice) {
    List<LocalSoil> soils = ranked(MaterialKeys.LOCAL_SOIL);
    LocalSoil soil =
        soils.stream()
            .filter(s -> s.name().equals(choice.name()))
            .findFirst()
            .orElseThrow(() -> unknown(choice, soils.stream().map(LocalSoil::name).toList()));
    return new SoilGiven(
        soil.sand(),
        soil.clay(),
        soil.organic(),
        choice.rock(),
        choice.depth(),
        soil.available(),
        soil.intake(),
        soil.source(),
        choice.place());
  }

  private static PlanException unknown(SoilChoice choice, List<String> names) {
    String known =
        names.isEmpty()
            ? " No soil is named; include a regional file that says `localSoil`."
            : " Named are: " + String.join(", ", names) + ".";
    return new PlanException(
        ProblemCode.UNKNOWN_WORD,
        choice.place(),
        "no soil is named '" + choice.name() + "'." + Nearest.hint(choice.name(), names) + known);
  }
}
