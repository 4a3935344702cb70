package yardloom.planting.trained;

import java.util.Locale;
import yardloom.facts.FlatCrown;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for trees that are trained. */
public final class TrainedWords {
  private static final Length NARROWEST = Length.feet(1);
  private static final Length WIDEST = Length.feet(30);

  private static final Angle EAST = Angle.degrees(90);

  private TrainedWords() {}

  @Verb(
      help = "Says that a fruit tree is trained flat or narrow, and how wide it is kept.",
      example = "trained 'espalier', width: 10.ft")
  public static void trained(
      TreeScope in,
      @Arg(name = "form", help = "how it is trained", choices = TrainedForm.class) String form,
      @Opt(
              name = "width",
              help = "along its wires or wall, 1 to 30 ft (0.3 to 9 m)",
              fallback = "the usual width of the form")
          Length width,
      @Opt(
              name = "bearing",
              help = "of its wires or wall, clockwise from north",
              fallback = "90.deg, east to west")
          Angle bearing) {
    TrainedForm found = Choices.parse(TrainedForm.class, form);
    if (in.element().attributes().has(Trained.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), in.element().id() + " is already trained");
    }
    if (width != null && (width.compareTo(NARROWEST) < 0 || width.compareTo(WIDEST) > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          String.format(
              Locale.ROOT,
              "width must be between 1 ft (0.3 m) and 30 ft (9 m), got %s",
              Say.size(width)));
    }
    Length kept = width == null ? TrainedData.of(found).width() : width;
    Trained trained = new Trained(found, kept);
    in.element().attributes().add(Trained.KEY, trained, in.place());
    if (trained.isFlat()) {
      Angle wires = bearing == null ? EAST : bearing;
      in.element()
          .attributes()
          .add(FlatCrown.KEY, new FlatCrown(kept, trained.depth(), wires), in.place());
    }
  }
}
