package yardloom.language.value;

import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;

/** The units a number may carry in a script: one getter for each unit, as in {@code 4.ft}. */
public final class NumberUnits {
  private NumberUnits() {}

  public static Length getM(Number value) {
    return Length.metres(Unit.METRE.toSi(value.doubleValue()));
  }

  public static Length getCm(Number value) {
    return Length.metres(Unit.CENTIMETRE.toSi(value.doubleValue()));
  }

  public static Length getMm(Number value) {
    return Length.metres(Unit.MILLIMETRE.toSi(value.doubleValue()));
  }

  public static Length getKm(Number value) {
    return Length.metres(Unit.KILOMETRE.toSi(value.doubleValue()));
  }

  public static Length getFt(Number value) {
    return Length.metres(Unit.FOOT.toSi(value.doubleValue()));
  }

  public static Length getInch(Number value) {
    return Length.metres(Unit.INCH.toSi(value.doubleValue()));
  }

  public static Length getYd(Number value) {
    return Length.metres(Unit.YARD.toSi(value.doubleValue()));
  }

  public static Length getUsft(Number value) {
    return Length.metres(Unit.SURVEY_FOOT.toSi(value.doubleValue()));
  }

  public static Length getCh(Number value) {
    return Length.metres(Unit.CHAIN.toSi(value.doubleValue()));
  }

  public static Length getLi(Number value) {
    return Length.metres(Unit.LINK.toSi(value.doubleValue()));
  }

  public static Length getRd(Number value) {
    return Length.metres(Unit.ROD.toSi(value.doubleValue()));
  }

  public static Area getSqm(Number value) {
    return Area.squareMetres(Unit.SQUARE_METRE.toSi(value.doubleValue()));
  }

  public static Area getSqft(Number value) {
    return Area.squareMetres(Unit.SQUARE_FOOT.toSi(value.doubleValue()));
  }

  public static Area getSqyd(Number value) {
    return Area.squareMetres(Unit.SQUARE_YARD.toSi(value.doubleValue()));
  }

  public static Area getHa(Number value) {
    return Area.squareMetres(Unit.HECTARE.toSi(value.doubleValue()));
  }

  public static Area getAcre(Number value) {
    return Area.squareMetres(Unit.ACRE.toSi(value.doubleValue()));
  }

  public static Volume getM3(Number value) {
    return Volume.cubicMetres(Unit.CUBIC_METRE.toSi(value.doubleValue()));
  }

  public static Volume getL(Number value) {
    return Volume.cubicMetres(Unit.LITRE.toSi(value.doubleValue()));
  }

  public static Volume getFt3(Number value) {
    return Volume.cubicMetres(Unit.CUBIC_FOOT.toSi(value.doubleValue()));
  }

  public static Volume getYd3(Number value) {
    return Volume.cubicMetres(Unit.CUBIC_YARD.toSi(value.doubleValue()));
  }

  public static Volume getGal(Number value) {
    return Volume.cubicMetres(Unit.GALLON.toSi(value.doubleValue()));
  }

  public static Mass getKg(Number value) {
    return Mass.kilograms(Unit.KILOGRAM.toSi(value.doubleValue()));
  }

  public static Mass getG(Number value) {
    return Mass.kilograms(Unit.GRAM.toSi(value.doubleValue()));
  }

  public static Mass getT(Number value) {
    return Mass.kilograms(Unit.TONNE.toSi(value.doubleValue()));
  }

  public static Mass getLb(Number value) {
    return Mass.kilograms(Unit.POUND.toSi(value.doubleValue()));
  }

  public static Mass getOz(Number value) {
    return Mass.kilograms(Unit.OUNCE.toSi(value.doubleValue()));
  }

  public static Mass getTon(Number value) {
    return Mass.kilograms(Unit.SHORT_TON.toSi(value.doubleValue()));
  }

  public static Angle getRad(Number value) {
    return Angle.radians(Unit.RADIAN.toSi(value.doubleValue()));
  }

  public static Angle getDeg(Number value) {
    return Angle.radians(Unit.DEGREE.toSi(value.doubleValue()));
  }

  public static Flow getM3s(Number value) {
    return Flow.cubicMetresPerSecond(Unit.CUBIC_METRE_PER_SECOND.toSi(value.doubleValue()));
  }

  public static Flow getLph(Number value) {
    return Flow.cubicMetresPerSecond(Unit.LITRE_PER_HOUR.toSi(value.doubleValue()));
  }

  public static Flow getLpm(Number value) {
    return Flow.cubicMetresPerSecond(Unit.LITRE_PER_MINUTE.toSi(value.doubleValue()));
  }

  public static Flow getGpm(Number value) {
    return Flow.cubicMetresPerSecond(Unit.GALLON_PER_MINUTE.toSi(value.doubleValue()));
  }

  public static Flow getGph(Number value) {
    return Flow.cubicMetresPerSecond(Unit.GALLON_PER_HOUR.toSi(value.doubleValue()));
  }

  public static Pressure getPa(Number value) {
    return Pressure.pascals(Unit.PASCAL.toSi(value.doubleValue()));
  }

  public static Pressure getKPa(Number value) {
    return Pressure.pascals(Unit.KILOPASCAL.toSi(value.doubleValue()));
  }

  public static Pressure getBar(Number value) {
    return Pressure.pascals(Unit.BAR.toSi(value.doubleValue()));
  }

  public static Pressure getPsi(Number value) {
    return Pressure.pascals(Unit.POUND_PER_SQUARE_INCH.toSi(value.doubleValue()));
  }

  public static Temperature getK(Number value) {
    return Temperature.kelvins(Unit.KELVIN.toSi(value.doubleValue()));
  }

  public static Temperature getDegC(Number value) {
    return Temperature.kelvins(Unit.CELSIUS.toSi(value.doubleValue()));
  }

  public static Temperature getDegF(Number value) {
    return Temperature.kelvins(Unit.FAHRENHEIT.toSi(value.doubleValue()));
  }

  public static TimeSpan getS(Number value) {
    return TimeSpan.seconds(Unit.SECOND.toSi(value.doubleValue()));
  }

  public static TimeSpan getMin(Number value) {
    return TimeSpan.seconds(Unit.MINUTE.toSi(value.doubleValue()));
  }

  public static TimeSpan getH(Number value) {
    return TimeSpan.seconds(Unit.HOUR.toSi(value.doubleValue()));
  }

  public static TimeSpan getDays(Number value) {
    return TimeSpan.seconds(Unit.DAY.toSi(value.doubleValue()));
  }

  public static TimeSpan getWeeks(Number value) {
    return TimeSpan.seconds(Unit.WEEK.toSi(value.doubleValue()));
  }

  public static Money getMoney(Number value) {
    return Money.amount(Unit.MONEY_UNIT.toSi(value.doubleValue()));
  }
}
