package yardloom.materials.mulch;

import java.util.EnumMap;
import java.util.Map;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * What the plan says about sheet mulch, with a default for everything it leaves out.
 *
 * @param lengths a value for every {@link LengthSetting}
 * @param allowance extra share of bulk material and sheets that is ordered
 * @param settling share of the depth lost in the first year, for topping up
 * @param minimumLoad the least volume of chips that is delivered
 * @param pocket compost for each plant of a perennial bed, in its planting pocket
 * @param chipsOnly whether no cardboard is laid anywhere
 */
public record MulchSettings(
    Map<LengthSetting, Derived<Length>> lengths,
    Derived<Double> allowance,
    Derived<Double> settling,
    Derived<Volume> minimumLoad,
    Derived<Volume> pocket,
    boolean chipsOnly) {
  /** On the plan. */
  public static final AttributeKey<MulchSettings> KEY =
      new AttributeKey<>("materials.sheet-mulch", MulchSettings.class);

  private static final Source ALLOWANCE =
      Source.commonPractice("a tenth more for uneven ground, packing and torn sheets");
  private static final Source SETTLING =
      Source.memory(
          "Fresh chips lose 20 to 50 % of their depth in the first year",
          "recalled from gardening practice", 0, "");
  private static final Source NO_MINIMUM = Source.commonPractice("no minimum load is asked");

  private static final Source NO_POCKETS =
      Source.commonPractice("the compost over the bed serves the planting pockets");

  public MulchSettings {
    lengths = Map.copyOf(lengths);
  }

  /** What the plan says, or every default. */
  public static MulchSettings of(Plan plan) {
    return plan.attributes().get(KEY).orElseGet(MulchSettings::defaults);
  }

  /** Every default. */
  public static MulchSettings defaults() {
    return of(Map.of(), null, null, null, null, false, SourceRef.NONE);
  }

  /**
   * The given values over the defaults; {@code null} stands for not given.
   *
   * @throws PlanException (OUT_OF_RANGE) for a length outside its setting's range, a share outside
   *     0 to 0.9, a negative volume, or an overlap not smaller than the sheet
   */
  public static MulchSettings of(
      Map<LengthSetting, Length> given,
      Number allowance,
      Number settling,
      Volume minimumLoad,
      Volume pocket,
      boolean chipsOnly,
      SourceRef place) {
    Map<LengthSetting, Derived<Length>> lengths = new EnumMap<>(LengthSetting.class);
    for (LengthSetting s : LengthSetting.values()) {
      Length value = given.get(s);
      lengths.put(
          s,
          value == null
              ? Derived.by("default of " + s.word(), s.source()).gives(s.fallback())
              : Derived.given(inRange(s, value, place), s.word(), place));
    }
    MulchSettings made =
        new MulchSettings(
            lengths,
            share("ordering allowance", allowance, 0.1, ALLOWANCE, place),
            share("chips settling", settling, 0.3, SETTLING, place),
            volume("ordering minimumLoad", minimumLoad, NO_MINIMUM, place),
            volume("compost pocket", pocket, NO_POCKETS, place),
            chipsOnly);
    requireOverlapBelowSheet(made, place);
    return made;
  }

  private static Length inRange(LengthSetting s, Length value, SourceRef place) {
    if (value.compareTo(s.least()) < 0 || value.compareTo(s.most()) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          s.word()
              + " must lie between "
              + Say.depth(s.least())
              + " and "
              + Say.depth(s.most())
              + ", got "
              + Say.depth(value));
    }
    return value;
  }

  private static Derived<Double> share(
      String word, Number given, double fallback, Source source, SourceRef place) {
    if (given == null) {
      return Derived.by("default of " + word, source).gives(fallback);
    }
    double value = given.doubleValue();
    if (!(value >= 0 && value <= 0.9)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          word + " is a share and must lie between 0 and 0.9 (0.1 is a tenth), got " + value);
    }
    return Derived.given(value, word, place);
  }

  private static Derived<Volume> volume(String word, Volume given, Source none, SourceRef place) {
    if (given == null) {
      return Derived.by("default of " + word, none).gives(Volume.ZERO);
    }
    if (given.cubicMetres() < 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, place, word + " cannot be negative, got " + given);
    }
    return Derived.given(given, word, place);
  }

  private static void requireOverlapBelowSheet(MulchSettings made, SourceRef place) {
    Length overlap = made.length(LengthSetting.CARDBOARD_OVERLAP).value();
    Length side =
        made.length(LengthSetting.SHEET_LENGTH)
            .value()
            .min(made.length(LengthSetting.SHEET_WIDTH).value());
    if (overlap.compareTo(side.times(0.5)) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          "cardboard overlap "
              + Say.depth(overlap)
              + " is more than half the sheet's shorter side "
              + Say.depth(side)
              + "; use larger sheets or a smaller overlap");
    }
  }

  public Derived<Length> length(LengthSetting setting) {
    return lengths.get(setting);
  }
}
