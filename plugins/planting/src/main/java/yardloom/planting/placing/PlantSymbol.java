package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.Plant.Form;
import yardloom.planting.catalogue.Plant.Season;
import yardloom.planting.traits.Growth;

/**
 * How a plant is drawn, so that form and leaf habit are told apart without colour: the outline is
 * its grown spread, its weight says woody or not, the mark in its middle the form, a hatch that it
 * keeps its leaves. Dots all over it say that it covers the ground.
 *
 * @param evergreen whether it keeps its leaves in winter
 * @param small whether it is too small for an outline
 */
record PlantSymbol(Habit habit, boolean evergreen, boolean small)
    implements Comparable<PlantSymbol> {
  /** Plants with a smaller spread have no outline. */
  static final Length SMALL = Length.feet(2);

  /** Of the spread of a small annual, how much its cross takes. */
  private static final double CROSS = 0.6;

  /** The forms that symbols tell apart. */
  enum Habit {
    TREE("Tree"),
    SHRUB("Shrub"),
    CLIMBER("Climber"),
    PERENNIAL("Perennial"),
    COVER("Ground cover"),
    ANNUAL("Annual");

    private final String words;

    Habit(String words) {
      this.words = words;
    }
  }

  static PlantSymbol of(Plant plant) {
    Habit habit = habitOf(plant);
    boolean small = plant.size().spread().middle().compareTo(SMALL) < 0;
    return new PlantSymbol(
        habit, plant.growth().season() == Season.EVERGREEN, small && !isOutlined(habit));
  }

  private static boolean isOutlined(Habit habit) {
    return habit == Habit.COVER;
  }

  private static Habit habitOf(Plant plant) {
    if (plant.growth().form() == Form.HERB) {
      return Growth.of(plant).layer() == Growth.Layer.COVER ? Habit.COVER : Habit.PERENNIAL;
    }
    return switch (plant.growth().form()) {
      case TREE -> Habit.TREE;
      case SHRUB -> Habit.SHRUB;
      case VINE -> Habit.CLIMBER;
      default -> Habit.ANNUAL;
    };
  }

  /** The marks of one plant. */
  List<Mark> at(Point at, Length spread, boolean stands, String about) {
    List<Mark> marks = new ArrayList<>();
    if (!small) {
      Style ring = stands ? outline().existing() : outline();
      marks.add(new Mark.Symbol(at, SymbolForm.DISC, spread, Angle.ZERO, ring, about));
    }
    if (small && habit == Habit.ANNUAL) {
      marks.addAll(cross(at, spread.times(CROSS / 2), about));
      return marks;
    }
    middle()
        .ifPresent(
            form -> marks.add(new Mark.Symbol(at, form, spread, Angle.ZERO, centre(), about)));
    return marks;
  }

  /** A cross that keeps off its neighbours, whatever the scale. */
  private List<Mark> cross(Point at, Length arm, String about) {
    Length back = arm.negative();
    Point left = at.moved(back, Length.ZERO);
    Point down = at.moved(Length.ZERO, back);
    return List.of(
        new Mark.Stroke(Line.between(left, at.moved(arm, Length.ZERO)), crossing(), about),
        new Mark.Stroke(Line.between(down, at.moved(Length.ZERO, arm)), crossing(), about));
  }

  private Style crossing() {
    return Style.line(name() + "-cross", ink(), 0.25);
  }

  private Optional<SymbolForm> middle() {
    return switch (habit) {
      case PERENNIAL -> Optional.of(SymbolForm.DOT);
      case ANNUAL -> Optional.of(SymbolForm.CROSS);
      case CLIMBER -> Optional.of(SymbolForm.TRIANGLE);
      default -> Optional.empty();
    };
  }

  private String name() {
    return "plant-"
        + habit.name().toLowerCase(java.util.Locale.ROOT)
        + (evergreen ? "-evergreen" : "");
  }

  private Style outline() {
    boolean woody = habit == Habit.SHRUB || habit == Habit.TREE || habit == Habit.CLIMBER;
    Style plain = Style.filled(name(), fill()).outlined(ink(), woody ? 0.35 : 0.18);
    if (habit == Habit.COVER) {
      return plain.hatched(evergreen ? Hatch.DOTS : Hatch.SPARSE_DOTS);
    }
    return evergreen ? plain.hatched(Hatch.DIAGONAL) : plain;
  }

  /**
   * What keeps its leaves and is too small for a hatch has a filled mark, what does not an open
   * one.
   */
  private Style centre() {
    boolean open = small && !evergreen && habit != Habit.ANNUAL;
    return Style.filled(name() + "-middle", open ? fill() : ink()).outlined(ink(), 0.25);
  }

  private String fill() {
    return switch (habit) {
      case PERENNIAL -> "#a9cf8f";
      case COVER -> "#cfe3b8";
      case ANNUAL -> "#f2d48a";
      case SHRUB -> "#7fb069";
      case CLIMBER -> "#b9b6d8";
      case TREE -> "#8cc084";
    };
  }

  private String ink() {
    return switch (habit) {
      case PERENNIAL, COVER -> "#2f5d1e";
      case ANNUAL -> "#7a5a12";
      case SHRUB, TREE -> "#23491a";
      case CLIMBER -> "#4a4580";
    };
  }

  /** What the legend says of it. */
  LegendEntry legend() {
    String leaves = evergreen ? ", keeps its leaves" : "";
    String spread = habit.words + leaves + ", at mature spread";
    if (middle().isPresent()) {
      if (!small) {
        return LegendEntry.ringed(spread, middle().get(), centre(), outline());
      }
      Style style = habit == Habit.ANNUAL ? crossing() : centre();
      return LegendEntry.symbol(habit.words + leaves, middle().get(), style);
    }
    return LegendEntry.symbol(spread, SymbolForm.DISC, outline());
  }

  @Override
  public int compareTo(PlantSymbol other) {
    return java.util.Comparator.comparing(PlantSymbol::habit)
        .thenComparing(PlantSymbol::evergreen)
        .thenComparing(PlantSymbol::small)
        .compare(this, other);
  }
}
