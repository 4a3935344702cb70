package yardloom.materials.goods;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.goods.formula.Lumber;
import yardloom.materials.goods.formula.Pavers;

/** The words about lumber, edging, pavers, posts and wire. */
public final class HardWords {
  private static final SaidRange STOCK =
      new SaidRange(Length.metres(0.6), Length.metres(12.2), "2 to 40 ft", "0.6 to 12.2 m");
  private static final SaidRange KERF =
      new SaidRange(Length.ZERO, Length.inches(1), "0 to 1 in", "0 to 25 mm");
  private static final SaidRange PIECE =
      new SaidRange(Length.metres(0.05), Length.feet(330), "2 in to 330 ft", "5 cm to 100 m");
  private static final SaidRange APART =
      new SaidRange(Length.metres(0.6), Length.metres(9.2), "2 to 30 ft", "0.6 to 9.2 m");
  private static final SaidRange POST =
      new SaidRange(Length.metres(0.9), Length.metres(4.9), "3 to 16 ft", "0.9 to 4.9 m");
  private static final Length PAVER = Length.metres(0.025);
  private static final int MOST_STOCKS = 6;

  private HardWords() {}

  @Verb(help = "Puts a frame of boards about this bed.", example = "frame('2x10', stock: 8.ft)")
  public static void frame(
      BedScope bed,
      @Arg(name = "size", help = "lumber as sold, such as 2x10") String size,
      @Opt(name = "stock", help = "length in which boards are bought", fallback = "8 ft (2.44 m)")
          Length stock,
      @Opt(name = "alsoStock", help = "a list of other lengths to buy", fallback = "none")
          List<?> alsoStock,
      @Opt(name = "kerf", help = "width of the saw cut", fallback = "1/8 in (3.2 mm)") Length kerf,
      @Opt(name = "courses", help = "boards above one another", fallback = "1") Number courses) {
    Lumber.size(size);
    Length board = stock == null ? Length.feet(8) : stock;
    Length cut = kerf == null ? Length.inches(0.125) : kerf;
    double high = courses == null ? 1 : courses.doubleValue();
    List<Length> stocks = new ArrayList<>(List.of(board));
    for (Object other : alsoStock == null ? List.of() : alsoStock) {
      require(
          bed,
          other instanceof Length,
          "alsoStock is a list of lengths, as "
              + units(bed).both("[10.ft, 12.ft]", "[3.m, 3.6.m]"));
      stocks.add((Length) other);
    }
    for (Length each : stocks) {
      require(bed, STOCK.holds(each), "stock is " + STOCK.in(units(bed)) + " long");
    }
    require(bed, stocks.size() <= MOST_STOCKS, "stock comes in at most 6 lengths");
    require(bed, KERF.holds(cut), "kerf is " + KERF.in(units(bed)));
    require(bed, high >= 1 && high <= 6 && high == Math.rint(high), "courses are 1 to 6");
    bed.element()
        .attributes()
        .add(Frame.KEY, new Frame(size, stocks, cut, (int) high, bed.place()), bed.place());
  }

  private static UnitSystem units(BedScope bed) {
    return bed.draft().info().units();
  }

  private static void require(BedScope bed, boolean holds, String rule) {
    if (!holds) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, bed.place(), "of a frame, " + rule);
    }
  }

  @Verb(
      help = "Puts an edging about this bed, bought in pieces.",
      example = "edging('steel strip', piece: 10.ft)")
  public static void edging(
      BedScope bed,
      @Arg(name = "what", help = "what it is made of") String what,
      @Opt(name = "piece", help = "length of one piece", fallback = "10 ft (3.05 m)")
          Length piece) {
    Length each = piece == null ? Length.feet(10) : piece;
    if (!PIECE.holds(each)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          bed.place(),
          "a piece of edging is " + PIECE.in(units(bed)) + " long");
    }
    Edging edging = new Edging(Making.name("edging", what), each, bed.place());
    bed.element().attributes().add(Edging.KEY, edging, bed.place());
  }

  @Verb(
      help = "A trellis or espalier of posts and wire along a line.",
      example = "trellis('grapes', line([point(2.ft, 60.ft), point(40.ft, 60.ft)]), wires: 3)")
  public static void trellis(
      PlanScope plan,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "where it stands") Line line,
      @Opt(name = "spacing", help = "most from post to post", fallback = "8 ft (2.44 m)")
          Length spacing,
      @Opt(name = "wires", help = "wires above one another", fallback = "4") Number wires,
      @Opt(name = "post", help = "full length of a post", fallback = "8 ft (2.44 m)") Length post,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built) {
    Length apart = spacing == null ? Length.feet(8) : spacing;
    Length length = post == null ? Length.feet(8) : post;
    double count = wires == null ? 4 : wires.doubleValue();
    boolean sound = APART.holds(apart) && POST.holds(length);
    if (!sound || !(count >= 0 && count <= 12) || count != Math.rint(count)) {
      UnitSystem units = plan.draft().info().units();
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "posts stand "
              + APART.in(units)
              + " apart and are "
              + POST.in(units)
              + " long, with up to 12 wires");
    }
    Trellis made =
        new Trellis(Making.name("trellis", name), line, apart, (int) count, length, plan.place());
    Making.add(plan, built, () -> plan.draft().attributes().add(Trellis.KEY, made, plan.place()));
  }

  @Verb(
      help = "Counts pavers, bedding sand and base for a paved place.",
      example = "pavers('terrace', terrace.shape, length: 8.inch, width: 4.inch)")
  public static void pavers(
      PlanScope plan,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground that is paved") Shape shape,
      @Opt(name = "length", help = "of one paver", fallback = "8 in (203 mm)") Length length,
      @Opt(name = "width", help = "of one paver", fallback = "4 in (102 mm)") Length width,
      @Opt(name = "thickness", help = "of one paver", fallback = "2.375 in (60 mm)")
          Length thickness,
      @Opt(name = "waste", help = "share for cuts and breakage", fallback = "0.1") Number waste,
      @Opt(
              name = "traffic",
              help = "what goes over it",
              fallback = "foot",
              choices = Pavers.Traffic.class)
          String traffic) {
    PaverField field =
        new PaverField(
            Making.name("paving", name),
            shape,
            length == null ? Length.inches(8) : length,
            width == null ? Length.inches(4) : width,
            thickness == null ? Length.inches(2.375) : thickness,
            waste == null ? 0.1 : waste.doubleValue(),
            Choices.parse(Pavers.Traffic.class, traffic, Pavers.Traffic.FOOT).base(),
            plan.place());
    boolean sizes = field.length().compareTo(PAVER) >= 0 && field.width().compareTo(PAVER) >= 0;
    if (shape.isEmpty() || !sizes || !(field.waste() >= 0 && field.waste() <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "pavers need ground, sides of "
              + plan.draft().info().units().both("1 in", "2.5 cm")
              + " or more and a waste of 0 to 1");
    }
    plan.draft().attributes().add(PaverField.KEY, field, plan.place());
  }
}
