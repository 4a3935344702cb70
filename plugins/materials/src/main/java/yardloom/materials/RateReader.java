package yardloom.materials;

import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.materials.data.BulkData;
import yardloom.materials.data.WorkData;
import yardloom.materials.model.LocalRate;
import yardloom.materials.model.Price;
import yardloom.materials.model.Spread;

/** Checks a local rate against the shipped table that it replaces a row of. */
final class RateReader {
  /** Low, likely and high in the unit given. */
  record Range(double low, double likely, double high) {
    Spread times(double factor, String cause, Source source) {
      return new Spread(low * factor, likely * factor, high * factor, cause, source);
    }
  }

  /** How much smaller or larger than the shipped ones the trucks of a place may be. */
  private static final double OTHER_TRUCKS = 3;

  private RateReader() {}

  /** A price, which may be nothing. */
  static Price price(String item, Range range, String unit, Source source) {
    requireRising(range, range.low() >= 0);
    if (!unit.equals(Price.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw wrongUnit(unit, "piece, yd3, m3, ft, m, h or another unit word");
    }
    return new Price(item, unit, range.times(1, "price", source), false);
  }

  /** A rate of labour, loads or density in the shipped table's unit. */
  static LocalRate rate(LocalRate.Kind kind, String item, Range range, String unit, Source source) {
    requireRising(range, range.low() > 0);
    return switch (kind) {
      case LABOUR -> new LocalRate(kind, item, unit, labour(item, range, unit, source));
      case LOAD -> new LocalRate(kind, item, "yd3", load(item, range, unit, source));
      case DENSITY -> new LocalRate(kind, item, "lb/yd3", density(item, range, unit, source));
      case PRICE -> throw new IllegalArgumentException("prices are kept in the price book");
    };
  }

  private static void requireRising(Range range, boolean positive) {
    if (!(range.low() <= range.likely() && range.likely() <= range.high())
        || !positive
        || !Double.isFinite(range.high())) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a rate rises from low to likely to high and is more than 0 (a price may be 0); got "
              + range.low()
              + ", "
              + range.likely()
              + ", "
              + range.high());
    }
  }

  private static Spread labour(String task, Range range, String unit, Source source) {
    String shipped = WorkData.unit(task);
    Optional<Dimension> wanted = Unit.byWord(shipped).map(Unit::dimension);
    boolean same =
        unit.equals(shipped)
            || wanted.isPresent() && Unit.byWord(unit).map(Unit::dimension).equals(wanted);
    if (!same) {
      throw wrongUnit(unit, shipped + " or another unit of its kind, for \"" + task + "\"");
    }
    return range.times(1, "pace of work", source);
  }

  private static Spread load(String material, Range range, String unit, Source source) {
    Spread shipped = BulkData.cubicYardsPerLoad(material);
    Unit volume =
        Unit.byWord(unit)
            .filter(u -> u.dimension() == Dimension.VOLUME)
            .orElseThrow(() -> wrongUnit(unit, "yd3 or m3"));
    Spread load =
        range.times(Volume.cubicMetres(volume.toSi(1)).cubicYards(), "truck size", source);
    requireTruck(material, load, shipped);
    return load;
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

  private static Spread density(String material, Range range, String unit, Source source) {
    BulkData.poundsPerCubicYard(material);
    double poundsPerYard =
        switch (unit) {
          case "lb/yd3" -> 1;
          case "kg/m3" -> Mass.kilograms(1).pounds() * Volume.cubicYards(1).cubicMetres();
          default -> throw wrongUnit(unit, "lb/yd3 or kg/m3");
        };
    return range.times(poundsPerYard, "moisture and packing", source);
  }

  private static PlanException wrongUnit(String unit, String allowed) {
    return new PlanException(
        ProblemCode.UNKNOWN_WORD, "'" + unit + "' is no unit for this rate; write " + allowed);
  }
}
