package yardloom.sun.obstacle;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.sun.position.Dates;

/** The words for what passes a tree's crown. */
public final class CrownWords {
  public static final AttributeKey<Dates> LEAVES = new AttributeKey<>("sun.leaves", Dates.class);

  public static final AttributeKey<Crown> CROWN = new AttributeKey<>("sun.crown", Crown.class);

  private CrownWords() {}

  /**
   * How a tree's crown lets light through.
   *
   * @param inLeaf share that passes in leaf
   * @param bare share that passes without leaves
   */
  public record Crown(double inLeaf, double bare, boolean cylinder) {
    /** What holds when the plan says nothing: recalled ranges of shade trees, unverified. */
    public static final Crown USUAL = new Crown(0.2, 0.65, false);
  }

  @Verb(help = "Says when a tree bears leaves.", example = "leafOn '04-15', '11-01'")
  public static void leafOn(
      TreeScope in,
      @Arg(name = "from", help = "first day in leaf, month-day") String from,
      @Arg(name = "to", help = "last day in leaf, month-day") String to) {
    in.element().attributes().add(LEAVES, Dates.read(in.place(), from, to), in.place());
  }

  @Verb(
      help = "Says how much direct light passes a tree's crown, and what form it has.",
      example = "crown inLeaf: 0.15, bare: 0.6, form: 'cylinder'")
  public static void crown(
      TreeScope in,
      @Opt(name = "inLeaf", help = "share that passes in leaf, 0 to 1", fallback = "0.2")
          Number inLeaf,
      @Opt(name = "bare", help = "share that passes without leaves, 0 to 1", fallback = "0.65")
          Number bare,
      @Opt(name = "form", help = "its form", fallback = "ellipsoid", choices = CrownForm.class)
          String form) {
    in.element()
        .attributes()
        .add(
            CROWN,
            new Crown(
                share(in.place(), "inLeaf", inLeaf, Crown.USUAL.inLeaf()),
                share(in.place(), "bare", bare, Crown.USUAL.bare()),
                Choices.parse(CrownForm.class, form, CrownForm.ELLIPSOID) == CrownForm.CYLINDER),
            in.place());
  }

  /** The forms of crowns. */
  public enum CrownForm {
    ELLIPSOID,
    CYLINDER
  }

  private static double share(SourceRef place, String what, Number value, double usual) {
    double share = value == null ? usual : value.doubleValue();
    if (!(share >= 0 && share <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          what + " is a share from 0 (no light) to 1 (all), got " + value);
    }
    return share;
  }
}
