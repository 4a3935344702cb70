package yardloom.materials.mulch;

import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The words about tough weeds. */
public final class WeedWords {
  private WeedWords() {}

  @Verb(
      help = "Names a tough weed of the whole site: more cardboard and chips are laid.",
      example = "weed('bindweed')")
  public static void weed(
      PlanScope plan, @Arg(name = "name", help = "its common name") String name) {
    plan.draft().attributes().add(Weed.KEY, WeedData.of(name), plan.place());
  }

  @Verb(
      help = "Names a tough weed of this bed: more cardboard and chips are laid here.",
      example = "weed('bindweed')")
  public static void weed(BedScope bed, @Arg(name = "name", help = "its common name") String name) {
    bed.element().attributes().add(Weed.KEY, WeedData.of(name), bed.place());
  }
}
