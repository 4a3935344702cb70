package yardloom.language.run;

import java.util.List;
import java.util.function.Consumer;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.language.value.Shown;

/**
 * A small vocabulary, so that tests of the language need no plugin. Notes become parameters of the
 * plan. {@code note} takes anything, which no real word does, so that attacks cannot fail merely
 * because a text was needed.
 */
public final class TestWords {
  private TestWords() {}

  static Lexicon lexicon() {
    return Lexicon.of(List.of(new Vocabulary("kernel", List.of(TestWords.class, BedWords.class))));
  }

  @Verb(help = "Writes a note.", example = "note 'hello'")
  public static void note(PlanScope plan, @Arg(name = "text", help = "what to say") Object text) {
    plan.draft().parameter("note " + plan.place().line(), Shown.text(text));
  }

  @Verb(help = "Makes a rectangle.", example = "rect(0.m, 0.m, 2.m, 1.m)")
  public static Shape rect(
      Scope scope,
      @Arg(name = "x", help = "left edge") Length x,
      @Arg(name = "y", help = "lower edge") Length y,
      @Arg(name = "width", help = "to the right") Length width,
      @Arg(name = "depth", help = "upwards") Length depth) {
    return Shape.rectangle(new Point(x, y), width, depth);
  }

  @Verb(help = "Makes a point.", example = "point(1.m, 2.m)")
  public static Point point(
      Scope scope,
      @Arg(name = "x", help = "to the right") Length x,
      @Arg(name = "y", help = "upwards") Length y) {
    return new Point(x, y);
  }

  @Verb(help = "Adds a bed.", example = "bed 'a', shape, use: 'annual'")
  public static Handle bed(
      PlanScope plan,
      @Arg(name = "name", help = "its name") String name,
      @Arg(name = "shape", help = "the ground it covers") Shape shape,
      @Opt(name = "use", help = "what grows", required = true, choices = Element.BedUse.class)
          String use,
      @Opt(name = "depth", help = "of soil") Length depth,
      @Opt(name = "rows", help = "number of rows") Number rows,
      Consumer<BedScope> block) {
    ElementId id = new ElementId(ElementKind.BED, name);
    var element =
        plan.draft()
            .add(
                id,
                plan.place(),
                common ->
                    new Element.Bed(
                        common,
                        shape,
                        yardloom.kernel.vocab.Choices.parse(Element.BedUse.class, use)));
    plan.draft()
        .parameter("bed " + name, use + " " + depth + " " + rows + " " + plan.place().line());
    if (block != null) {
      block.accept(new BedScope(plan.draft(), element, plan.place()));
    }
    if (name.isEmpty()) {
      throw new IllegalArgumentException("a bed needs a name");
    }
    return new Handle(id, shape);
  }

  /** Words of the bed's block. */
  public static final class BedWords {
    private BedWords() {}

    @Verb(help = "Plants a crop.", example = "plant 'kale'")
    public static void plant(
        BedScope bed,
        @Arg(name = "crop", help = "its name") String crop,
        @Opt(name = "spacing", help = "between plants") Length spacing) {
      bed.draft().parameter("plant " + crop + " in " + bed.element().id().name(), "" + spacing);
    }

    @Verb(help = "Breaks.", example = "broken()")
    public static void broken(BedScope bed) {
      throw new UnsupportedOperationException("inside");
    }
  }
}
