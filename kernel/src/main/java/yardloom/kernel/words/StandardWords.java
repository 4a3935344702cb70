package yardloom.kernel.words;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words by which a plan or a regional file replaces the standards that the kernel checks by. */
public final class StandardWords {
  /**
   * How far digging and paving keep from trunks.
   *
   * @param factor radius over trunk diameter
   */
  public record TreeProtection(double factor, String rule) {
    public static final AttributeKey<TreeProtection> KEY =
        new AttributeKey<>("kernel.tree-protection", TreeProtection.class);
  }

  /** What is asked of paths of one use; what is empty stays as it is. */
  public record PathAsked(
      PathUse use,
      Optional<Length> least,
      Optional<Length> advised,
      Optional<Length> turning,
      Optional<Length> passing,
      Optional<Length> passingEvery,
      String rule) {
    public static final AttributeKey<PathAsked> KEY =
        new AttributeKey<>("kernel.path-standard", PathAsked.class);
  }

  private StandardWords() {}

  @Verb(
      help = "How wide the protected ground round a trunk is, as a multiple of its diameter.",
      example = "treeProtection(factor: 12, rule: 'tree ordinance')")
  public static void treeProtection(
      PlanScope in,
      @Opt(name = "factor", help = "radius over trunk diameter", required = true) Number factor,
      @Opt(name = "rule", help = "who says so", fallback = "none: verify locally") String rule) {
    double times = factor.doubleValue();
    if (!(times > 0 && times <= 60)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "the factor must lie between 0 and 60 trunk diameters, got " + factor);
    }
    Making.once(in, TreeProtection.KEY, t -> true, "`treeProtection`");
    in.draft()
        .attributes()
        .add(TreeProtection.KEY, new TreeProtection(times, Limits.or(rule, "")), in.place());
  }

  @Verb(
      help =
          "What a code or a regional file asks of paths of one use, in place of the usual values.",
      example =
          "pathRule('accessible', least: 48.inch, turning: 60.inch, passing: 60.inch,"
              + " passingEvery: 200.ft, rule: 'access code of the city')")
  public static void pathRule(
      PlanScope in,
      @Arg(name = "use", help = "whose paths", choices = PathUse.class) String use,
      @Opt(name = "least", help = "least width", fallback = "as usual") Length least,
      @Opt(name = "advised", help = "width below which a note is made", fallback = "as usual")
          Length advised,
      @Opt(
              name = "turning",
              help = "diameter of the circle to turn in at the end of a path",
              fallback = "as usual")
          Length turning,
      @Opt(name = "passing", help = "width at which two pass each other", fallback = "as usual")
          Length passing,
      @Opt(
              name = "passingEvery",
              help = "greatest way between two places to pass",
              fallback = "as usual")
          Length passingEvery,
      @Opt(name = "rule", help = "who says so", required = true) String rule) {
    PathUse by = Choices.parse(PathUse.class, use);
    Making.once(in, PathAsked.KEY, p -> p.use() == by, "the rule for " + use + " paths");
    in.draft()
        .attributes()
        .add(
            PathAsked.KEY,
            new PathAsked(
                by,
                width("least", least),
                width("advised", advised),
                width("turning", turning),
                width("passing", passing),
                Optional.ofNullable(passingEvery)
                    .map(l -> Limits.positive("`passingEvery:`", l, Limits.REACH)),
                rule),
            in.place());
  }

  private static Optional<Length> width(String name, Length value) {
    return Optional.ofNullable(value)
        .map(l -> Limits.positive("`" + name + ":`", l, Limits.PATH_WIDTH));
  }
}
