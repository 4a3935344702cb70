package yardloom.sun.light;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word that chooses the names for amounts of sun. */
public final class LightWords {
  public static final AttributeKey<String> SCHEME = new AttributeKey<>("sun.scheme", String.class);

  private LightWords() {}

  @Verb(help = "Chooses the names and limits for amounts of sun.", example = "lightScheme 'hot'")
  public static void lightScheme(
      PlanScope in,
      @Arg(
              name = "name",
              help = "temperate, hot, six four, six three or four way; the sheet prints its limits")
          String name) {
    in.draft().attributes().add(SCHEME, LightSchemes.named(name).name(), in.place());
  }
}
