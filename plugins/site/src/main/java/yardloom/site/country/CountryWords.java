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
    if (!Arrays.asList(Locale.getISOCountries()).contains(code)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          plan.place(),
          "'" + code + "' is not a country; write its two capital letters, such as US or DE");
    }
    plan.draft().attributes().add(DigCalls.COUNTRY, code, plan.place());
  }
}
