package yardloom.sun.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.sun.TestYards;
import yardloom.sun.yard.SunSettings;

/** A plan's own limits of sun. */
class OwnSchemeTest {
  private final Draft draft = TestYards.at(40, -105);
  private final PlanScope plan = new PlanScope(draft, new SourceRef("plan.groovy", 4, 1));

  private LightScheme scheme() {
    return SunSettings.of(draft.freeze()).scheme();
  }

  private static String table(String rows) {
    return "class,from_hours\n" + rows.replace(';', '\n');
  }

  /** Limits as given, hours as printed to a tenth: 8.45 is printed 8.4 (to even), 4.96 is 5.0. */
  @ParameterizedTest
  @CsvSource({
    "24, full sun",
    "8.5, full sun",
    "8.44, part sun",
    "5, part sun",
    "4.96, part sun",
    "4.94, shade",
    "0, shade"
  })
  void hours_fallIntoTheOwnClasses(double hours, String expected) {
    LightWords.lightScheme(plan, "ours", table("full sun,8.5;part sun,5;shade,0"), null);
    assertEquals(expected, scheme().of(hours).name());
  }

  @Test
  void schemeIsPrinted_withItsSource() {
    LightWords.lightScheme(
        plan, "ours", table("full sun,8.5;shade,0"), Source.plan("our own garden"));
    assertEquals("full sun from 8.5 h, shade from 0 h", scheme().text());
    assertTrue(scheme().source().cite().contains("our own garden"));
    Draft other = TestYards.at(40, -105);
    LightWords.lightScheme(new PlanScope(other, SourceRef.NONE), "ours", table("shade,0"), null);
    assertTrue(
        SunSettings.of(other.freeze()).scheme().source().cite().contains("light scheme ours"));
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "sunny,8;shade,0 | UNKNOWN_WORD | plants know no light 'sunny'; a class is one of full",
        "shad,0 | UNKNOWN_WORD | Did you mean `shade`?",
        "full sun,8;full sun,5;shade,0 | DUPLICATE | 'full sun' already has its hours",
        "full sun,24.1;shade,0 | OUT_OF_RANGE | at most 24 h, got 24.1 h",
        "full sun,5;part sun,5;shade,0 | OUT_OF_RANGE | below the 5.0 h of the class before",
        "full sun,5;part sun,-1 | OUT_OF_RANGE | begins at 0 h or more a day",
        "full sun,5;part sun,1 | OUT_OF_RANGE | the last class of a light scheme begins at 0 h",
        "'' | OUT_OF_RANGE | end the table with a line such as shade,0"
      })
  void tablesThatAreNoScheme_areRefused(String rows, ProblemCode code, String message) {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> LightWords.lightScheme(plan, "ours", table(rows == null ? "" : rows), null));
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.getMessage().contains("light scheme ours"), e.getMessage());
  }

  @Test
  void wholeDayOfSun_isAClass() {
    LightWords.lightScheme(plan, "ours", table("full sun,24;shade,0"), null);
    assertEquals("shade", scheme().of(23.9).name());
  }

  @Test
  void sourceWithoutLimits_isRefused() {
    PlanException e =
        assertThrows(
            PlanException.class, () -> LightWords.lightScheme(plan, "hot", null, Source.plan("x")));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
    LightWords.lightScheme(plan, "hot", null, null);
    assertEquals("hot", scheme().name());
  }
}
