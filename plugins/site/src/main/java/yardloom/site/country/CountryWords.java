package yardloom.site.country;

import java.util.Arrays;
import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word about the country. */
public final class CountryWords {
  private CountryWords() {}

  @Verb(
      help =
          "Says in which country the yard lies, where its time zone does not tell: cautions name"
              + " the services of that country only.",
      example = "country('US')")
  public static void country(
      PlanScope plan,
      @Arg(name = "code", help = "two letters by ISO 3166, such as US") String code) {
    // Other scripts have letters whose capital is one of these.
    String capitals = code.matches("[A-Za-z]{2}") ? code.toUpperCase(Locale.ROOT) : "";
    if (!Arrays.asList(Locale.getISOCountries()).contains(capitals)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          plan.place(),
          "'" + code + "' is not a country; write its two letters, such as US or DE");
    }
    plan.draft().attributes().add(DigCalls.COUNTRY, capitals, plan.place());
  }
}
