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

  /** Words in no good order, one with choices. */
  public static final class Chosen {
    private Chosen() {}

    /** What may stand there. */
    public enum Wood {
      OAK,
      RED_CEDAR
    }

    @Verb(help = "Adds a rail.", example = "rail 'oak'")
    public static void rail(
        BedScope bed,
        @Arg(name = "wood", help = "what of", choices = Wood.class) String wood,
        @Opt(name = "end", help = "how it ends", required = true) String end) {}

    @Verb(help = "Adds a post.", example = "post 1", word = "stake")
    public static void post(BedScope bed) {}
  }

  /** Words that break one rule each. */
  public static final class Hidden {
    @Verb(help = "H.", example = "e")
    static void word(PlanScope plan) {}
  }

  /** Not static. */
  public static final class Instance {
    @Verb(help = "H.", example = "e")
    public void word(PlanScope plan) {}
  }

  /** Without help. */
  public static final class Mute {
    @Verb(help = " ", example = "e")
    public static void word(PlanScope plan) {}
  }

  /** Without an example. */
  public static final class NoExample {
    @Verb(help = "H.", example = "")
    public static void word(PlanScope plan) {}
  }

  /** Without a block that it stands in. */
  public static final class NoScope {
    @Verb(help = "H.", example = "e")
    public static void word(@Arg(name = "n", help = "h") String n) {}
  }

  /** Without any parameter. */
  public static final class Nothing {
    @Verb(help = "H.", example = "e")
    public static void word() {}
  }

  /** The block before an argument. */
  public static final class BlockFirst {
    @Verb(help = "H.", example = "e")
    public static void word(
        PlanScope plan, Consumer<BedScope> block, @Arg(name = "n", help = "h") String n) {}
  }

  /** A block of text. */
  public static final class TextBlock {
    @Verb(help = "H.", example = "e")
    public static void word(PlanScope plan, Consumer<String> block) {}
  }

  /** A parameter without a name. */
  public static final class Unnamed {
    @Verb(help = "H.", example = "e")
    public static void word(PlanScope plan, String n) {}
  }

  private static void refused(Class<?> words, String says) {
    PlanException e = assertThrows(PlanException.class, () -> lexicon(words));
    assertTrue(e.getMessage().contains("word `word` of plugin test: " + says), e.getMessage());
  }

  @Test
  void malformedWords_areRefusedWithWhatIsWrong() {
    refused(Hidden.class, "its method must be public and static");
    refused(Instance.class, "its method must be public and static");
    refused(Mute.class, "needs help and example");
    refused(NoExample.class, "needs help and example");
    refused(NoScope.class, "its first parameter must be a Scope");
    refused(Nothing.class, "its first parameter must be a Scope");
    refused(BlockFirst.class, "the block must come last");
    refused(TextBlock.class, "the block must be a Consumer of a Scope type");
    refused(Unnamed.class, "each parameter needs @Arg or @Opt");
  }

  @Test
  void words_areListedByBlockAndName() {
    Lexicon both = lexicon(Good.class, Chosen.class);
    assertEquals(
        List.of("rail", "stake", "trough", "peg"), both.all().stream().map(Word::name).toList());
    assertEquals(List.of("peg", "rail", "stake", "trough"), List.copyOf(both.names()));
    assertEquals(
        List.of("peg", "rail", "stake"),
        both.words(BedScope.class).stream().map(Word::name).toList());
    assertEquals(List.of(BedScope.class, PlanScope.class, Scope.class), both.scopes());
    assertEquals(
        List.of(BedScope.class, PlanScope.class, Scope.class),
        lexicon(Good.class).scopes(),
        "a block that is opened counts, though no word stands in it but the free ones");
  }

  @Test
  void parameter_hasItsChoices_andSaysIfItMustBeGiven() {
    Word rail = lexicon(Chosen.class).word(BedScope.class, "rail").orElseThrow();
    assertEquals(List.of("oak", "red cedar"), rail.parameters().get(0).choices());
    assertTrue(rail.parameters().get(0).required());
    assertEquals(List.of(), rail.parameters().get(1).choices());
    assertTrue(rail.parameters().get(1).required());
    assertTrue(rail.inner().isEmpty());
    assertEquals("rail(wood, end: …)", rail.signature());
  }
}
