package yardloom.work.cost;

import java.util.OptionalDouble;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.work.haul.WholePieces;

/**
 * Whether bags or a bulk delivery are cheaper, and from which volume on bulk wins.
 *
 * <p>Bags cost ceil(v/b)·p, bulk costs f + v·q with delivery fee f. Without rounding bags they meet
 * at v = f/(p/b − q); no break-even if a bag's volume is not dearer than bulk. Prices and fee ≥ 0,
 * bag above zero; otherwise OUT_OF_RANGE.
 *
 * <p>References: arithmetic; no publication is needed.
 */
public final class BagOrBulk {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.commonPractice("bags: ceil(volume / bag) × price; bulk: delivery + volume × price");

  private BagOrBulk() {}

  /**
   * What is offered.
   *
   * @param bag volume of one bag
   * @param bagPrice of one bag
   * @param bulkPerYard of a cubic yard
   * @param delivery of one load
   */
  public record Offer(Volume bag, double bagPrice, double bulkPerYard, double delivery) {
    public Offer {
      if (!(bag.cubicMetres() > 0 && bagPrice >= 0 && bulkPerYard >= 0 && delivery >= 0)) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE, "bags need a volume above zero and prices of zero or more");
      }
    }
  }

  public static double bags(Volume volume, Offer offer) {
    return WholePieces.of(volume, offer.bag()) * offer.bagPrice();
  }

  public static double bulk(Volume volume, Offer offer, int loads) {
    return volume.cubicYards() * offer.bulkPerYard() + loads * offer.delivery();
  }

  /** Cubic yards from which one bulk load is cheaper; empty if never. */
  public static OptionalDouble breakEvenYards(Offer offer) {
    double bagPerYard = offer.bagPrice() / offer.bag().cubicYards();
    double gain = bagPerYard - offer.bulkPerYard();
    return gain > 0 ? OptionalDouble.of(offer.delivery() / gain) : OptionalDouble.empty();
  }
}
