package yardloom.kernel.vocab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;

class LexiconTest {

  /** Words of a well-formed vocabulary. */
  public static final class Good {
    private Good() {}

    @Verb(help = "Adds a trough.", example = "trough 'a', width: 4.ft")
    public static void trough(
        PlanScope plan,
        @Arg(name = "name", help = "its name") String name,
        @Opt(name = "width", help = "its width", fallback = "4 ft") Length width,
        Consumer<BedScope> block) {}

    @Verb(help = "Names a mark.", example = "peg 'a'")
    public static void peg(Scope anywhere, @Arg(name = "name", help = "its name") String name) {}
  }

  /** A second giver of a word. */
  public static final class Clash {
    private Clash() {}

    @Verb(help = "Adds a trough.", example = "trough()")
    public static void trough(PlanScope plan) {}
  }

  /** A word with a primitive parameter. */
  public static final class Primitive {
    private Primitive() {}

    @Verb(help = "Adds a trough.", example = "trough 3")
    public static void trough(PlanScope plan, @Arg(name = "n", help = "count") int n) {}
  }

  private static Lexicon lexicon(Class<?>... types) {
    return Lexicon.of(List.of(new Vocabulary("test", List.of(types))));
  }

  @Test
  void word_isReadFromItsMethod() {
    Word word = lexicon(Good.class).word(PlanScope.class, "trough").orElseThrow();
    assertEquals("trough(name, width: …) { … }", word.signature());
    assertEquals(BedScope.class, word.inner().orElseThrow());
    assertEquals(List.of("name"), word.arguments().stream().map(Word.Parameter::name).toList());
    assertFalse(word.options().get(0).required());
  }

  @Test
  void wordOfTheBareScope_standsInEveryBlock() {
    assertTrue(lexicon(Good.class).word(BedScope.class, "peg").isPresent());
    assertTrue(lexicon(Good.class).word(BedScope.class, "trough").isEmpty());
  }

  @Test
  void sameWordTwice_isRefusedNamingBothPlugins() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                Lexicon.of(
                    List.of(
                        new Vocabulary("one", List.of(Good.class)),
                        new Vocabulary("two", List.of(Clash.class)))));
    assertEquals(ProblemCode.PLUGIN_CONFLICT, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("the plugins one and two both offer `trough` in plan"));
  }

  @Test
  void primitiveParameter_isRefused() {
    assertThrows(PlanException.class, () -> lexicon(Primitive.class));
  }

  @Test
  void scopeName_isReadable() {
    assertEquals("bed", Scope.nameOf(BedScope.class));
    assertEquals("plan", Scope.nameOf(PlanScope.class));
  }
}
