package yardloom.soil.compost;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;
import yardloom.soil.compost.formula.FeedstockData;

/** The word about what is composted in the yard. */
public final class CompostWords {
  private CompostWords() {}

  @Verb(
      help = "Says how much a season of weeding or pruning brings, to be composted in the yard.",
      example = "residue('shrub trimmings', 1.5.yd3)")
  public static void residue(
      PlanScope plan,
      @Arg(name = "material", help = "a material of the compost table") String material,
      @Arg(name = "volume", help = "loose volume of a season") Volume volume) {
    FeedstockData.of(material);
    if (!(volume.cubicMetres() > 0 && volume.cubicMetres() < 1000)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a season brings more than nothing and less than 1000 m³ of " + material);
    }
    plan.draft()
        .attributes()
        .add(Residue.KEY, new Residue(material, volume, plan.place()), plan.place());
  }
}
