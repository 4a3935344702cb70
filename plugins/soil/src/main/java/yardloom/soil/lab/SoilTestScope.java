package yardloom.soil.lab;

import java.util.Optional;
import java.util.OptionalDouble;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Scope;

/** The block in which the results of a soil test are given. */
public final class SoilTestScope extends Scope {
  /** What the block has said so far. */
  static final class Given {
    private Number ph;
    private Number wantedPh;
    private Number bufferPh;
    private Number limePurity;
    private Number lead;
    private boolean otherSources;
    private Mass nitrogen;
    private Area nitrogenOver;
    private boolean nitrogenByCrop;
    private String grade;
    private Number wantedOrganic;
    private Length mixDepth;

    SoilTest test(SourceRef place) {
      return new SoilTest(
          new SoilTest.Acidity(
              maybe(ph),
              maybe(wantedPh),
              maybe(bufferPh),
              limePurity == null ? 100 : limePurity.doubleValue()),
          new SoilTest.Lead(maybe(lead), otherSources),
          new SoilTest.Feeding(
              Optional.ofNullable(nitrogen),
              nitrogenOver == null ? Area.squareFeet(1000) : nitrogenOver,
              nitrogenByCrop,
              Optional.ofNullable(grade)),
          new SoilTest.Organic(
              maybe(wantedOrganic), mixDepth == null ? Length.inches(6) : mixDepth),
          place);
    }

    private static OptionalDouble maybe(Number number) {
      return number == null ? OptionalDouble.empty() : OptionalDouble.of(number.doubleValue());
    }
  }

  private final Given given;

  SoilTestScope(Given given, SourceRef place) {
    super(place);
    this.given = given;
  }

  void acidity(Number ph, Number wanted, Number buffer, Number limePurity) {
    given.ph = ph;
    given.wantedPh = wanted;
    given.bufferPh = buffer;
    given.limePurity = limePurity;
  }

  void lead(Number ppm, boolean otherSources) {
    given.lead = ppm;
    given.otherSources = otherSources;
  }

  void nitrogen(Mass rate, Area over, boolean byCrop, String grade) {
    given.nitrogen = rate;
    given.nitrogenOver = over;
    given.nitrogenByCrop = byCrop;
    given.grade = grade;
  }

  void organic(Number wanted, Length mixDepth) {
    given.wantedOrganic = wanted;
    given.mixDepth = mixDepth;
  }

  @Override
  public SoilTestScope at(SourceRef newPlace) {
    return new SoilTestScope(given, newPlace);
  }
}
