package yardloom.soil.texture;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.soil.texture.formula.ProfileWater;
import yardloom.soil.texture.formula.SaxtonRawls;
import yardloom.soil.texture.formula.TextureClass;
import yardloom.soil.texture.formula.TextureRule;
import yardloom.soil.texture.formula.WaterPoints;

/** Gives the soil's water from what the plan says of its texture; nothing if it says nothing. */
public final class SoilCalculator implements Calculator {
  private static final double MOST_CLAY = 60;
  private static final double MOST_ORGANIC = 8;

  @Override
  public String id() {
    return "soil.soil";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(SoilGiven.FACT);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    in.find(SoilGiven.FACT)
        .flatMap(SoilCalculator::profile)
        .ifPresent(p -> out.give(YardFacts.SOIL, p));
  }

  private static Optional<SoilProfile> profile(SoilGiven soil) {
    TextureClass texture = TextureRule.classify(soil.sand(), soil.clay());
    boolean fitted = soil.clay() <= MOST_CLAY && soil.organic() <= MOST_ORGANIC;
    Optional<WaterPoints> points =
        fitted
            ? Optional.of(SaxtonRawls.of(soil.sand() / 100, soil.clay() / 100, soil.organic()))
            : Optional.empty();
    Optional<Derived<Length>> intake =
        soil.intake()
            .map(i -> Derived.by("intake of the named soil", soil.how()).gives(i))
            .or(() -> points.map(p -> formulaIntake(soil, p)));
    return available(soil, texture, points).map(share -> soil(soil, texture, share, intake));
  }

  private static Derived<Length> formulaIntake(SoilGiven soil, WaterPoints points) {
    return inputs(soil, "saturated conductivity", SaxtonRawls.SOURCE)
        .gives(Length.millimetres(points.intakeMmPerHour()));
  }

  private static Optional<Derived<Double>> available(
      SoilGiven soil, TextureClass texture, Optional<WaterPoints> points) {
    double fine = 1 - soil.rock();
    if (soil.available().isPresent()) {
      double share = soil.available().getAsDouble();
      return Optional.of(
          Derived.by("available share of the named soil × (1 − rock)", soil.how())
              .from("available share", share)
              .from("rock, share", soil.rock(), soil.place())
              .gives(share * fine));
    }
    if (points.isPresent()) {
      return points.map(
          p ->
              inputs(soil, "(field capacity − wilting point) × (1 − rock)", SaxtonRawls.SOURCE)
                  .from("field capacity", p.fieldCapacity())
                  .from("wilting point", p.wilting())
                  .gives(p.available() * fine));
    }
    // Outside the fit of the formula the survey's table still knows the class.
    return SoilWaterData.availableShare(texture, soil.organic())
        .map(
            range ->
                inputs(soil, "middle of the survey's range × (1 − rock)", range.source())
                    .from("low", range.low())
                    .from("high", range.high())
                    .gives(range.middle() * fine));
  }

  private static Derived.Builder inputs(SoilGiven soil, String formula, Source source) {
    return Derived.by(formula, source)
        .from("sand, percent", soil.sand(), soil.place())
        .from("clay, percent", soil.clay(), soil.place())
        .from("organic matter, percent", soil.organic(), soil.place())
        .from("rock, share", soil.rock(), soil.place());
  }

  private static SoilProfile soil(
      SoilGiven soil,
      TextureClass texture,
      Derived<Double> available,
      Optional<Derived<Length>> intake) {
    Derived<Length> stored =
        Derived.by("stored = available share × depth", ProfileWater.SOURCE)
            .from("available share", available)
            .from("depth", soil.depth(), soil.place())
            .gives(
                ProfileWater.stored(
                    List.of(new ProfileWater.Layer(soil.depth(), available.value(), 0))));
    return new SoilProfile(
        texture.title(), texture.isHeavy(), soil.depth(), available, stored, intake);
  }
}
