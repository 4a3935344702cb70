package yardloom.site.ground;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.ground.Earthwork;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for cuts and fills that are measured by sections along a line or by depths on a grid. */
public final class EarthWords {
  /** Earth to move at one place, in place. */
  public record Earth(String name, Derived<Volume> cut, Derived<Volume> fill) {
    public static final AttributeKey<Earth> KEY = new AttributeKey<>("site.earth", Earth.class);
  }

  /** Which way earth goes. */
  public enum Way {
    CUT,
    FILL
  }

  private static final int MOST = 10_000;
  private static final Length FURTHEST = Length.metres(1000);

  private EarthWords() {}

  @Verb(
      help = "Earth to move for a bank, ditch or mound, by its sections at even distances.",
      example = "earthSections('berm', [0.sqft, 6.sqft, 8.sqft, 0.sqft], every: 10.ft)")
  public static void earthSections(
      PlanScope in,
      @Arg(name = "name", help = "how tables call it") String name,
      @Arg(name = "sections", help = "areas of the sections, from one end to the other")
          List<Area> sections,
      @Opt(name = "every", help = "distance of the sections", required = true) Length every,
      @Opt(
              name = "way",
              help = "whether it is dug or filled",
              fallback = "fill",
              choices = Way.class)
          String way) {
    count(sections.size(), 2);
    for (Area section : sections) {
      if (section.squareMetres() < 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "a section cannot be negative, got " + section + "; dug earth is way: 'cut'");
      }
    }
    Length apart = Limits.positive("the distance of sections", every, FURTHEST);
    Derived<Volume> moved =
        Derived.by(
                "sum of distance × (first + second area) / 2, a third where one is zero",
                Earthwork.SECTIONS)
            .from("sections", sections.toString(), in.place())
            .from("distance", apart, in.place())
            .gives(Earthwork.along(sections, apart));
    Derived<Volume> none = Derived.given(Volume.ZERO, "none", in.place());
    boolean cut = Choices.parse(Way.class, way, Way.FILL) == Way.CUT;
    String called = Making.name("earth", name);
    in.draft()
        .attributes()
        .add(
            Earth.KEY,
            cut ? new Earth(called, moved, none) : new Earth(called, none, moved),
            in.place());
  }

  @Verb(
      help = "Earth to move for a pad, by depths at the crossings of a square grid, row by row.",
      example =
          "earthGrid('pad', [0.5.ft, 0.2.ft, -0.1.ft, 0.4.ft, 0.ft, -0.3.ft], columns: 3, cell: 10.ft)")
  public static void earthGrid(
      PlanScope in,
      @Arg(name = "name", help = "how tables call it") String name,
      @Arg(name = "depths", help = "depth of cut at each crossing; fill is negative")
          List<Length> depths,
      @Opt(name = "columns", help = "crossings in a row", required = true) Number columns,
      @Opt(name = "cell", help = "side of a cell", required = true) Length cell) {
    count(depths.size(), 4);
    int across = columns.intValue();
    if (across < 2
        || columns.doubleValue() != across
        || depths.size() % across != 0
        || depths.size() / across < 2) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          depths.size()
              + " depths cannot stand in rows of "
              + columns
              + "; give at least two whole rows of at least two");
    }
    Length side = Limits.positive("the side of a cell", cell, FURTHEST);
    Earthwork.Moved moved = Earthwork.grid(depths, across, side.multiply(side));
    in.draft()
        .attributes()
        .add(
            Earth.KEY,
            new Earth(
                Making.name("earth", name),
                grid(in, depths, side, moved.cut()),
                grid(in, depths, side, moved.fill())),
            in.place());
  }

  private static Derived<Volume> grid(
      PlanScope in, List<Length> depths, Length side, Volume volume) {
    return Derived.by("sum of cell × mean of its four corner depths", Earthwork.GRID)
        .from("depths", depths.toString(), in.place())
        .from("side of a cell", side, in.place())
        .gives(volume);
  }

  private static void count(int given, int least) {
    if (given < least || given > MOST) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "earth is measured at " + least + " to " + MOST + " places, got " + given);
    }
  }
}
