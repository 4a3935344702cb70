package yardloom.materials.load;

import java.util.Optional;
import java.util.function.Supplier;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.mulch.OwnBulk;

/** The words about truckloads and weights that hold where the yard lies. */
public final class LoadWords {
  /** How much smaller or larger than the shipped ones the trucks of a place may be. */
  private static final double OTHER_TRUCKS = 3;

  private LoadWords() {}

  @Verb(
      help = "Gives the truckload of a material here; it goes before the shipped one.",
      example =
          "localLoad('wood-chip mulch', likely: 8, low: 5, high: 12, unit: 'yd3',"
              + " source: publication('Chip loads', by: 'tree crew', seen: 'memory'))")
  public static void localLoad(
      PlanScope plan,
      @Arg(name = "material", help = "the material, as tables name it") String material,
      @Opt(name = "likely", help = "volume of one load", required = true) Number likely,
      @Opt(name = "low", help = "least", fallback = "the likely") Number low,
      @Opt(name = "high", help = "most", fallback = "the likely") Number high,
      @Opt(name = "unit", help = "yd3 or m3", required = true) String unit,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    add(
        plan,
        () -> {
          Optional<Spread> shipped =
              isOwn(plan, material)
                  ? Optional.empty()
                  : Optional.of(BulkData.cubicYardsPerLoad(material));
          Unit volume =
              Unit.byWord(unit)
                  .filter(u -> u.dimension() == Dimension.VOLUME)
                  .orElseThrow(() -> wrongUnit(unit, "yd3 or m3"));
          Spread load =
              Spread.given(low, likely, high, 0, "truck size", source)
                  .times(Volume.cubicMetres(volume.toSi(1)).cubicYards());
          shipped.ifPresent(s -> requireTruck(material, load, s));
          return new LocalRate(LocalRate.Kind.LOAD, material, "yd3", load, plan.place());
        });
  }

  @Verb(
      help = "Gives what a bulk material weighs here; it goes before the shipped one.",
      example =
          "localDensity('compost', likely: 1000, unit: 'lb/yd3',"
              + " source: publication('Compost', by: 'compost yard', seen: 'memory'))")
  public static void localDensity(
      PlanScope plan,
      @Arg(name = "material", help = "the material, as tables name it") String material,
      @Opt(name = "likely", help = "weight by volume, as delivered", required = true) Number likely,
      @Opt(name = "low", help = "least", fallback = "the likely") Number low,
      @Opt(name = "high", help = "most", fallback = "the likely") Number high,
      @Opt(name = "unit", help = "lb/yd3 or kg/m3", required = true) String unit,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    add(
        plan,
        () -> {
          if (!isOwn(plan, material)) {
            BulkData.poundsPerCubicYard(material);
          }
          double poundsPerYard =
              switch (unit) {
                case "lb/yd3" -> 1;
                case "kg/m3" -> Mass.kilograms(1).pounds() * Volume.cubicYards(1).cubicMetres();
                default -> throw wrongUnit(unit, "lb/yd3 or kg/m3");
              };
          Spread density =
              Spread.given(low, likely, high, 0, "moisture and packing", source)
                  .times(poundsPerYard);
          return new LocalRate(LocalRate.Kind.DENSITY, material, "lb/yd3", density, plan.place());
        });
  }

  private static boolean isOwn(PlanScope plan, String material) {
    return OwnBulk.find(plan.draft().attributes(), material).isPresent();
  }

  /** A plan may go before its regional file; one file does not say a thing twice. */
  private static void add(PlanScope plan, Supplier<LocalRate> said) {
    LocalRate rate;
    try {
      rate = said.get();
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
    Making.once(
        plan,
        BulkRates.KEY,
        r -> r.kind() == rate.kind() && r.item().equals(rate.item()),
        "the rate of \"" + rate.item() + "\"");
    plan.draft().attributes().add(BulkRates.KEY, rate, plan.place());
  }

  /** A page that says 21 cubic feet for 21 cubic yards is out by 27; local trucks are not. */
  private static void requireTruck(String material, Spread load, Spread shipped) {
    Volume least = Volume.cubicYards(shipped.low() / OTHER_TRUCKS);
    Volume most = Volume.cubicYards(shipped.high() * OTHER_TRUCKS);
    if (load.low() < least.cubicYards() || load.high() > most.cubicYards()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a load of "
              + material
              + " is "
              + both(least)
              + " to "
              + both(most)
              + "; got "
              + both(Volume.cubicYards(load.low()))
              + " to "
              + both(Volume.cubicYards(load.high()))
              + ". Look at the unit");
    }
  }

  private static String both(Volume volume) {
    return UnitSystem.US.both(
        Say.volume(volume, UnitSystem.US), Say.volume(volume, UnitSystem.METRIC));
  }

  private static PlanException wrongUnit(String unit, String allowed) {
    return new PlanException(
        ProblemCode.UNKNOWN_WORD, "'" + unit + "' is no unit for this rate; write " + allowed);
  }
}
