package yardloom.materials;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.words.PlanScope;
import yardloom.materials.data.BulkData;
import yardloom.materials.data.WorkData;
import yardloom.materials.model.LocalRate;
import yardloom.materials.model.MaterialKeys;
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

  private RateReader() {}

  static void add(
      PlanScope plan, LocalRate.Kind kind, String item, Range range, String unit, Source source) {
    boolean free = kind == LocalRate.Kind.PRICE;
    if (!(range.low() <= range.likely() && range.likely() <= range.high())
        || !(free ? range.low() >= 0 : range.low() > 0)
        || !Double.isFinite(range.high())) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a rate rises from low to likely to high and is more than 0 (a price may be 0); got "
              + range.low()
              + ", "
              + range.likely()
              + ", "
              + range.high());
    }
    try {
      switch (kind) {
        case PRICE -> price(plan, item, range, unit, source);
        case LABOUR -> rate(plan, kind, item, unit, labour(item, range, unit, source));
        case LOAD -> rate(plan, kind, item, "yd3", load(item, range, unit, source));
        case DENSITY -> rate(plan, kind, item, "lb/yd3", density(item, range, unit, source));
      }
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }

  private static void price(PlanScope plan, String item, Range range, String unit, Source source) {
    if (!unit.equals(Price.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw wrongUnit(unit, "piece, yd3, m3, ft, m, h or another unit word");
    }
    plan.draft()
        .attributes()
        .add(
            MaterialKeys.PRICE,
            new Price(item, unit, range.times(1, "price", source), false),
            plan.place());
  }

  private static void rate(
      PlanScope plan, LocalRate.Kind kind, String item, String unit, Spread value) {
    plan.draft()
        .attributes()
        .add(MaterialKeys.LOCAL_RATE, new LocalRate(kind, item, unit, value), plan.place());
  }

  private static Spread labour(String task, Range range, String unit, Source source) {
    String shipped = WorkData.unit(task);
    boolean same =
        unit.equals(shipped)
            || Unit.byWord(unit)
                    .map(Unit::dimension)
                    .equals(Unit.byWord(shipped).map(Unit::dimension))
                && Unit.byWord(unit).isPresent();
    if (!same) {
      throw wrongUnit(unit, shipped + " or another unit of its kind, for \"" + task + "\"");
    }
    return range.times(1, "pace of work", source);
  }

  private static Spread load(String material, Range range, String unit, Source source) {
    BulkData.cubicYardsPerLoad(material);
    Unit volume =
        Unit.byWord(unit)
            .filter(u -> u.dimension() == Dimension.VOLUME)
            .orElseThrow(() -> wrongUnit(unit, "yd3 or m3"));
    return range.times(Volume.cubicMetres(volume.toSi(1)).cubicYards(), "truck size", source);
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
