package yardloom.water.drip;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.ElementScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that set single emitters by trees and shrubs. */
public final class EmitterWords {
  /** Usual in dry and humid places alike (training pages of an equipment maker, read). */
  private static final double USUAL_SHARE = 0.6;

  static final String SHARE_SAYS =
      "as the plan says, else 60 % (training pages of an equipment maker)";

  /** Until soil and plants are known. */
  private static final Length ANY = Length.feet(3);

  private EmitterWords() {}

  @Verb(
      help =
          "Sets single emitters on rings of plain tube under the crown of the tree, as many as its"
              + " mature spread and the soil ask for.",
      example = "emitters flow: 1.gph, share: 0.6")
  public static void emitters(
      TreeScope in,
      @Opt(name = "flow", help = "of one emitter", required = true) Flow flow,
      @Opt(name = "share", help = "of the ground under the crown to wet", fallback = "0.6")
          Number share,
      @Opt(
              name = "compensating",
              help = "whether emitters hold their flow at any pressure from 8 psi (55 kPa) on",
              fallback = "false")
          Boolean compensating,
      @Opt(
              name = "rated",
              help = "pressure for which the emitter's flow is given",
              fallback = "20 psi (138 kPa)")
          Pressure rated) {
    set(in, flow, share, compensating, rated);
  }

  @Verb(
      help =
          "Sets single emitters by the plants of the bed, on plain tube, as many as each one's mature"
              + " spread and the soil ask for.",
      example = "emitters flow: 1.gph")
  public static void emitters(
      BedScope in,
      @Opt(name = "flow", help = "of one emitter", required = true) Flow flow,
      @Opt(name = "share", help = "of the ground under each plant to wet", fallback = "0.6")
          Number share,
      @Opt(
              name = "compensating",
              help = "whether emitters hold their flow at any pressure from 8 psi (55 kPa) on",
              fallback = "false")
          Boolean compensating,
      @Opt(
              name = "rated",
              help = "pressure for which the emitter's flow is given",
              fallback = "20 psi (138 kPa)")
          Pressure rated) {
    set(in, flow, share, compensating, rated);
  }

  private static void set(
      ElementScope in, Flow flow, Number share, Boolean compensating, Pressure rated) {
    double wets = share == null ? USUAL_SHARE : share.doubleValue();
    if (!(wets >= 0.1 && wets <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "emitters wet a share of 0.1 to 1 of the ground under a plant, got " + share);
    }
    DripWords.checkFlow(flow);
    Tube tube = new Tube(compensating, rated, null, null);
    DripWords.store(in, tube.with(flow, ANY, ANY, wets));
  }
}
