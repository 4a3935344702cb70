package yardloom.planting.harvest;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.planting.harvest.HarvestPlan.Range;
import yardloom.planting.placing.Planting.Specimen;
import yardloom.planting.trained.Trained;
import yardloom.planting.trained.TrainedData;

/**
 * What one tree bears, by the crown that the plan gives it.
 *
 * <p>A crown that is kept smaller than its kind grows bears as much less as it has less ground to
 * catch light on; a larger one bears no more. A trained tree bears by its width, what sources tell
 * of its form.
 *
 * <p>References: common practice, no source, for the share; that fruit follows the light a crown
 * catches: Robinson, Hoying and others, A Vision for Apple Orchard Systems of the Future, Cornell
 * University (read).
 */
final class TreeHarvest {
  private static final Source SHARE =
      Source.commonPractice("a smaller crown bears less, by the ground below it");

  private TreeHarvest() {}

  /** Empty where no yield of one tree is known. */
  static Optional<Range<Mass>> of(Specimen s) {
    if (s.trained().isPresent()) {
      Trained trained = s.trained().get();
      TrainedData.Usual usual = TrainedData.of(trained.form());
      return Optional.of(
          new Range<>(
              trained(s, trained, usual, usual.low()), trained(s, trained, usual, usual.high())));
    }
    return PlantYields.of(s.plant())
        .filter(y -> y.per() == Yield.Per.PLANT)
        .map(y -> new Range<>(grown(s, y, y.low()), grown(s, y, y.high())));
  }

  private static Derived<Mass> trained(
      Specimen s, Trained trained, TrainedData.Usual usual, Mass each) {
    double share = usual.share(trained.width());
    return Derived.by("yield of the form × share of its width", SHARE)
        .from("yield of the form", each)
        .from("yields of the form", usual.source().cite())
        .from("usual width", usual.width())
        .from("width", trained.width(), s.place())
        .from("share of its width", share)
        .gives(each.times(share));
  }

  private static Derived<Mass> grown(Specimen s, Yield yield, Mass each) {
    Length spread = s.plant().size().spread().middle();
    double share = crownShare(s.tree().crown(), spread);
    return Derived.by("yield of one × share of its crown", SHARE)
        .from("yield of one", each, s.place())
        .from("mature spread", spread)
        .from("crown in the plan", s.tree().crown(), s.place())
        .from("share of its crown", share)
        .from("yields of " + s.plant().name(), yield.cite())
        .gives(each.times(share));
  }

  /** The share of the ground of a grown crown, at most 1. */
  static double crownShare(Length crown, Length spread) {
    double ratio = crown.ratioTo(spread);
    return Math.min(1, ratio * ratio);
  }
}
