package yardloom.site.firm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.OwnPanel;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/**
 * The words for details of the author's own: pieces, edges, measures and notes, at true scale.
 *
 * <p>References: [1] ISO 5455 enlargement and reduction scales 1:1 to 1:50, from memory.
 */
public final class DetailWords {
  private static final double LETTER_MM = 2.5;
  private static final double LARGEST_SCALE = 50;
  private static final int LONGEST_TEXT = 80;
  private static final int MOST_MARKS = 400;
  private static final Length WIDEST = Length.metres(30);
  private static final Style EDGE = Style.line("detail-edge", Palette.INK, 0.5);

  private DetailWords() {}

  @Verb(
      help =
          "Draws a detail of your own beside a sheet's plan, at true scale, with its legend. Its"
              + " points are its own, wherever it is built.",
      example =
          "detail('Edge of a bed', scale: 10) { piece rect(0.ft, 0.ft, 1.ft, 6.inch), of: 'wood' }")
  public static void detail(
      PlanScope plan,
      @Arg(name = "title", help = "its title") String title,
      @Opt(name = "scale", help = "n of 1:n, 1 to 50", fallback = "10") Number scale,
      @Opt(
              name = "sheet",
              help = "the sheet it stands on, or the first drawing where that one is not drawn",
              fallback = "materials",
              choices = OwnSheet.class)
          String sheet,
      Consumer<DetailScope> block) {
    Making.name("detail", title);
    double n = Limits.or(scale, 10).doubleValue();
    if (!(n >= 1 && n <= LARGEST_SCALE)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "the scale of a detail is 1:1 to 1:50, got 1:" + scale + "; write `scale: 10` for 1:10");
    }
    DetailScope drawn = DetailScope.empty(plan.place());
    if (block != null) {
      block.accept(drawn);
    }
    if (drawn.marks().stream().noneMatch(m -> !(m instanceof Mark.Label))) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "detail '" + title + "' draws nothing; give it a `piece` or an `edge` in its block");
    }
    Making.once(plan, OwnPanel.KEY, o -> isDetail(o, title), "detail '" + title + "'");
    List<LegendEntry> legend =
        drawn.materials().stream()
            .filter(m -> m != DetailMaterial.AIR)
            .map(DetailMaterial::legend)
            .toList();
    Panel figure = new Panel.Figure(title, seen(drawn.marks()), legend, 0, n);
    plan.draft()
        .attributes()
        .add(
            OwnPanel.KEY,
            new OwnPanel(Choices.parse(OwnSheet.class, sheet, OwnSheet.MATERIALS).id(), figure),
            plan.place());
  }

  /** With each text on what later pieces leave of its own; that of a hidden piece is left out. */
  private static List<Mark> seen(List<Mark> marks) {
    List<Mark> seen = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      if (!(marks.get(i) instanceof Mark.Label label) || label.ground().isEmpty()) {
        seen.add(marks.get(i));
        continue;
      }
      Shape left = label.ground().get();
      for (Mark later : marks.subList(i + 1, marks.size())) {
        left = later instanceof Mark.Region over ? left.minus(over.shape()) : left;
      }
      if (!left.isEmpty()) {
        Point at = label.anchor() == Mark.Anchor.CENTRE ? left.heart() : label.at();
        seen.add(label(at, label.text(), label.anchor(), Optional.of(left)));
      }
    }
    return List.copyOf(seen);
  }

  /** The uppermost piece that a point lies in. */
  private static Optional<Shape> pieceAt(DetailScope in, Point at) {
    return in.marks().stream()
        .filter(m -> m instanceof Mark.Region piece && piece.shape().contains(at))
        .map(m -> ((Mark.Region) m).shape())
        .reduce((under, over) -> over);
  }

  private static boolean isDetail(OwnPanel own, String title) {
    return own.panel() instanceof Panel.Figure figure && figure.title().equals(title);
  }

  @Verb(
      help = "A piece of the detail, over those before it.",
      example = "piece(rect(0.ft, 0.ft, 1.ft, 6.inch), of: 'wood', says: 'Cedar, 2 by 6')")
  public static void piece(
      DetailScope in,
      @Arg(name = "shape", help = "its outline, at most 30 m (98 ft) wide or high") Shape shape,
      @Opt(
              name = "of",
              help = "what it is made of",
              required = true,
              choices = DetailMaterial.class)
          String of,
      @Opt(
              name = "says",
              help = "written in it or led to it, at most 80 letters",
              fallback = "nothing")
          String says) {
    DetailMaterial material = Choices.parse(DetailMaterial.class, of);
    if (shape.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, in.place(), "this piece has no area; is one side zero?");
    }
    Limits.atMost("the width of a piece", Length.metres(shape.bounds().getWidth()), WIDEST);
    Limits.atMost("the height of a piece", Length.metres(shape.bounds().getHeight()), WIDEST);
    in.materials().add(material);
    add(in, new Mark.Region(shape, material.style(), Choices.text(material)));
    if (says != null) {
      add(in, label(shape.heart(), line(in, says), Mark.Anchor.CENTRE, Optional.of(shape)));
    }
  }

  @Verb(
      help = "A line of the detail: a wire, a string, the level of the ground.",
      example = "edge(line([point(-1.ft, 0.ft), point(2.ft, 0.ft)]))")
  public static void edge(DetailScope in, @Arg(name = "line", help = "where it runs") Line line) {
    add(in, new Mark.Stroke(line, EDGE, "edge"));
  }

  @Verb(
      word = "dimension",
      help = "A measure of the detail, between two of its points.",
      example = "dimension(point(0.ft, 0.ft), point(1.ft, 0.ft), offset: -3.inch)")
  public static void measure(
      DetailScope in,
      @Arg(name = "from", help = "first end") Point from,
      @Arg(name = "to", help = "other end") Point to,
      @Opt(
              name = "offset",
              help = "from the points to the dimension line, left of the way if positive",
              fallback = "0 ft")
          Length offset) {
    if (from.distance(to).metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, in.place(), "a dimension needs two points apart from each other");
    }
    // What it says follows the plan's units, which may be named further down.
    add(in, new Mark.Dimension(from, to, Limits.or(offset, Length.ZERO), ""));
  }

  @Verb(
      word = "note",
      help = "A note of the detail, beside a point.",
      example = "note('two screws, 3 in', at: point(6.inch, 3.inch))")
  public static void remark(
      DetailScope in,
      @Arg(name = "text", help = "what it says, at most 80 letters") String text,
      @Opt(name = "at", help = "what it points to", required = true) Point at) {
    add(in, label(at, line(in, text), Mark.Anchor.NEAR, pieceAt(in, at)));
  }

  private static Mark label(Point at, String text, Mark.Anchor anchor, Optional<Shape> ground) {
    return new Mark.Label(at, text, LETTER_MM, false, 1, anchor, ground);
  }

  private static String line(DetailScope in, String text) {
    if (text.isBlank() || text.length() > LONGEST_TEXT) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "a text of a detail has 1 to " + LONGEST_TEXT + " letters, got " + text.length());
    }
    return Making.plain("text of a detail", text.strip());
  }

  private static void add(DetailScope in, Mark mark) {
    if (in.marks().size() == MOST_MARKS) {
      throw new PlanException(
          ProblemCode.LIMIT,
          in.place(),
          "a detail has at most " + MOST_MARKS + " pieces, edges, measures and notes");
    }
    in.marks().add(mark);
  }
}
