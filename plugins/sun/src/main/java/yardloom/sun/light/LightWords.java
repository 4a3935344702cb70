package yardloom.sun.light;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that chooses the names for amounts of sun. */
public final class LightWords {
  public static final AttributeKey<LightScheme> SCHEME =
      new AttributeKey<>("sun.scheme", LightScheme.class);

  private LightWords() {}

  @Verb(
      help =
          "Chooses the names and limits for amounts of sun, or gives your own as a table with the"
              + " header class,from_hours, most sun first.",
      example = "lightScheme 'hot'")
  public static void lightScheme(
      PlanScope in,
      @Arg(
              name = "name",
              help =
                  "temperate, hot, six four, six three or four way, or what your own is called; the"
                      + " sheet prints its limits")
          String name,
      @Opt(
              name = "classes",
              help = "your own limits, also as from fileText('light.csv')",
              fallback = "those of the named scheme")
          String classes,
      @Opt(
              name = "source",
              help = "as `publication` names it, with your own limits",
              fallback = "the plan itself")
          Source source) {
    in.draft().attributes().add(SCHEME, scheme(in, name, classes, source), in.place());
  }

  private static LightScheme scheme(PlanScope in, String name, String classes, Source source) {
    if (classes != null) {
      return OwnScheme.read(
          name, classes, source == null ? Source.plan("light scheme " + name) : source);
    }
    if (source != null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "a source belongs to your own limits; give them as classes: 'class,from_hours\\n…', or"
              + " leave the source out");
    }
    return LightSchemes.named(name);
  }
}
