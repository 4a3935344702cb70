package yardloom.site.lawn;

import java.util.function.Consumer;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.GroundScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words for ground that is mulched whole, and for what stands on open ground. */
public final class GroundWords {
  private GroundWords() {}

  @Verb(
      help =
          "Ground that is sheet-mulched whole, such as a lawn turned over; beds, paths and what is"
              + " built in it keep their own.",
      example = "mulchedGround('back lawn', rect(5.ft, 62.ft, 50.ft, 50.ft))")
  public static Handle mulchedGround(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "all of the ground, with what lies in it") Shape shape,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      Consumer<GroundScope> block) {
    return Making.built(in, built, () -> make(in, name, shape, block));
  }

  private static Handle make(PlanScope in, String name, Shape shape, Consumer<GroundScope> block) {
    ElementId id = Making.id(ElementKind.MULCHED_GROUND, name);
    Making.requireGround(id, shape);
    ElementDraft element = Making.add(in, id, c -> new Element.MulchedGround(c, shape));
    Making.read(block, GroundScope::new, in, element);
    return new Handle(id, shape);
  }

  @Verb(
      help = "What stands on ground of the yard on which nothing is drawn.",
      example = "openGround('bare')")
  public static void openGround(
      PlanScope in,
      @Arg(name = "what", help = "what stands there", choices = OpenGround.class) String what) {
    if (in.draft().attributes().has(OpenGround.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "`openGround` is already given; say it once");
    }
    in.draft().attributes().add(OpenGround.KEY, Choices.parse(OpenGround.class, what), in.place());
  }
}
