package yardloom.materials.work;

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
import yardloom.materials.calc.ProfileWater;
import yardloom.materials.calc.SaxtonRawls;
import yardloom.materials.calc.TextureRule;
import yardloom.materials.data.SoilWaterData;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Range;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.model.TextureClass;
import yardloom.materials.model.WaterPoints;

/** Gives the soil's water from what the plan says of its texture; nothing if it says nothing. */
public final class SoilCalculator implements Calculator {
  private static final double MOST_CLAY = 60;
  private static final double MOST_ORGANIC = 8;

  @Override
  public String id() {
    return "materials.soil";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SOIL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes()
        .get(MaterialKeys.SOIL)
        .flatMap(SoilCalculator::profile)
        .ifPresent(p -> out.give(YardFacts.SOIL, p));
  }

  private static Optional<SoilProfile> profile(SoilGiven soil) {
    TextureClass texture = TextureRule.classify(soil.sand(), soil.clay());
    boolean fitted = soil.clay() <= MOST_CLAY && soil.organic() <= MOST_ORGANIC;
    if (fitted) {
      WaterPoints points = SaxtonRawls.of(soil.sand() / 100, soil.clay() / 100, soil.organic());
      Derived<Double> available =
          inputs(soil, "(field capacity − wilting point) × (1 − rock)", SaxtonRawls.SOURCE)
              .from("field capacity", points.fieldCapacity())
              .from("wilting point", points.wilting())
              .gives(points.available() * (1 - soil.rock()));
      Derived<Length> intake =
          inputs(soil, "saturated conductivity", SaxtonRawls.SOURCE)
              .gives(Length.millimetres(points.intakeMmPerHour()));
      return Optional.of(soil(soil, texture, available, Optional.of(intake)));
    }
    // Outside the fit of the formula the survey's table still knows the class.
    Optional<Range> survey = SoilWaterData.availableShare(texture, soil.organic());
    return survey.map(
        range ->
            soil(
                soil,
                texture,
                inputs(soil, "middle of the survey's range × (1 − rock)", range.source())
                    .from("low", range.low())
                    .from("high", range.high())
                    .gives(range.middle() * (1 - soil.rock())),
                Optional.empty()));
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
