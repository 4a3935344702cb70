package yardloom.water.need;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.water.need.formula.CropwatRain;
import yardloom.water.need.formula.DependableRain;
import yardloom.water.need.formula.Tr21Rain;
import yardloom.water.need.formula.UsbrRain;

/** How the part of a month's rain that plants can use is found. */
public enum EffectiveRain {
  /** What is taken where the plan says nothing. */
  CROPWAT(
      "the USDA SCS form of CROPWAT",
      "rain × (125 mm − 0.2 × rain) / 125 mm; over 250 mm: 125 mm + 0.1 × rain",
      Source.computed("CROPWAT, USDA SCS effective rainfall", "FAO", 0, "as quoted by pyCropWat")),
  USBR(
      "the steps of the US Bureau of Reclamation",
      "0.95 × min(rain, 1 in) + 0.9 × min(max(rain − 1 in, 0 in), 1 in)"
          + " + 0.82 × min(max(rain − 2 in, 0 in), 1 in) + 0.65 × min(max(rain − 3 in, 0 in), 1 in)"
          + " + 0.45 × min(max(rain − 4 in, 0 in), 1 in) + 0.25 × min(max(rain − 5 in, 0 in), 1 in)"
          + " + 0.05 × max(rain − 6 in, 0 in)",
      Source.computed(
          "Bureau of Reclamation effective rainfall", "State of Colorado, StateCU", 0, "xcrain")),
  TR21(
      "SCS TR-21, with grass as the crop and 3 in (76 mm) a watering",
      "f × (0.70917 rain^0.82416 − 0.11556) × 10^(0.02426 use), in inches, f of the depth refilled",
      Source.computed("Technical Release 21, as coded in StateCU", "USDA SCS", 1970, "xcrain")),
  DEPENDABLE(
      "FAO's dependable rain",
      "0.6 rain − 10 up to 75 mm, 0.8 rain − 25 above, at least 0",
      Source.computed("Dependable rainfall", "FAO", 0, "as quoted by pyCropWat"));

  /** The method that the plan asks for. */
  public static final AttributeKey<EffectiveRain> KEY =
      new AttributeKey<>("water.effective-rain", EffectiveRain.class);

  /** Usual in TR-21 where nothing else is known; from memory. */
  private static final Length REFILL = Length.inches(3);

  private final String title;
  private final String formula;
  private final Source source;

  EffectiveRain(String title, String formula, Source source) {
    this.title = title;
    this.formula = formula;
    this.source = source;
  }

  /** The plan's method. */
  static EffectiveRain of(Plan plan) {
    return plan.attributes().get(KEY).orElse(CROPWAT);
  }

  /** For notes: effective rain by …. */
  public String title() {
    return title;
  }

  /** The part that plants can use of a month's rain. */
  public Derived<Length> of(Length rain, Source from, Derived<Length> referenceEt) {
    Derived.Builder why =
        Derived.by(formula, source).from("rain", rain).from("rain source", from.cite());
    return switch (this) {
      case CROPWAT -> why.gives(Length.millimetres(CropwatRain.effectiveMm(rain.millimetres())));
      case USBR -> why.gives(UsbrRain.effective(rain));
      case TR21 ->
          why.from("use, taken as reference ET", referenceEt)
              .from("depth refilled", REFILL)
              .from("f of it", Tr21Rain.storageFactor(REFILL))
              .gives(Tr21Rain.effective(rain, referenceEt.value(), REFILL));
      case DEPENDABLE -> why.gives(DependableRain.effective(rain));
    };
  }
}
