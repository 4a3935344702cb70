package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.Lattice;
import yardloom.planting.placing.formula.Layout;
import yardloom.planting.trained.Trained;

/**
 * One {@code plant} line, laid out in its part of the bed.
 *
 * @param place the script line
 * @param ground the part of the bed it has
 * @param at where each plant stands; empty if the ground is narrower than one spacing
 * @param placed where its line says it stands; empty for a slice of the bed and what follows
 * @param follows what stood on the same ground before it in the year; empty for the first
 */
public record Planting(
    Element.Bed bed,
    SourceRef place,
    PlantChoice choice,
    Plant plant,
    Shape ground,
    Length spacing,
    Length rowSpacing,
    List<Point> at,
    Optional<Placement> placed,
    Optional<Follows> follows) {
  /**
   * What a planting follows on its ground.
   *
   * @param line what the plan says of it
   */
  public record Follows(Planting before, Next line) {}

  /** What another part of the plan makes is not planted now. */
  public Planting {
    if (bed.turn() != PartTurn.NOW) {
      choice = choice.standing();
    }
  }

  /** A planting on ground of its own. */
  Planting(
      Element.Bed bed,
      SourceRef place,
      PlantChoice choice,
      Plant plant,
      Shape ground,
      Length spacing,
      Length rowSpacing,
      List<Point> at,
      Optional<Placement> placed) {
    this(bed, place, choice, plant, ground, spacing, rowSpacing, at, placed, Optional.empty());
  }

  /** The same on the ground of another, once that is over. */
  Planting after(Planting before, Next line) {
    Optional<Follows> follows = Optional.of(new Follows(before, line));
    return new Planting(
        bed, place, choice, plant, ground, spacing, rowSpacing, at, placed, follows);
  }

  /** The first that stands on its ground in a year: itself, if it follows nothing. */
  public Planting first() {
    return follows.map(f -> f.before().first()).orElse(this);
  }

  /** Its kind, and after which other it comes on its ground. */
  public String title() {
    return plant.name() + follows.map(f -> ", after " + f.before().plant().name()).orElse("");
  }

  /** How plants are laid out. */
  public static final Source LATTICE =
      Source.commonPractice("square or staggered lattice, half a spacing from every edge");

  /** Bark that mulch and plants keep off: common practice. */
  private static final Length OFF_STEM = Length.feet(1);

  /**
   * A tree whose species the plan names.
   *
   * @param inGrass whether grass grows below it and draws water with it
   * @param trained the form it is trained in, if it is
   * @param stock as what it is bought, if the plan says
   */
  public record Specimen(
      Element.Tree tree,
      SourceRef place,
      Plant plant,
      boolean inGrass,
      Optional<Trained> trained,
      Optional<String> stock) {
    /** How wide it grows: as it is kept, else as its kind does. */
    public Length width() {
      return trained.map(Trained::width).orElseGet(() -> plant.size().spread().middle());
    }

    /** How wide its leaves reach: as it is trained, else as drawn. */
    public Length crown() {
      return trained.map(Trained::width).orElseGet(tree::crown);
    }

    /** The ground below its leaves, as drawn or trained. */
    public Area ground() {
      return trained.map(Trained::ground).orElseGet(() -> tree.shape().area());
    }

    /** Its kind, and how it is trained. */
    public String title() {
      return plant.name() + trained.map(t -> ", " + Choices.text(t.form())).orElse("");
    }

    /** What tree, and grass if any, draw together. */
    public Crop.Coefficients kc() {
      return inGrass ? plant.draw().crop().inGrass().orElseThrow() : plant.draw().crop().kc();
    }
  }

  /** How many there are. */
  public Derived<Integer> count() {
    return Derived.by("lattice places in the bed", LATTICE)
        .from("bed area", ground.area(), bed.place())
        .from("spacing", spacing, place)
        .from("row spacing", rowSpacing, place)
        .gives(at.size());
  }

  /** The places by drill, each with its places in order: neighbours a spacing apart. */
  public List<List<Point>> drills() {
    List<List<Point>> drills = new ArrayList<>();
    Point last = null;
    for (Point p : at) {
      if (last == null || last.distance(p).compareTo(spacing.times(1.01)) > 0) {
        drills.add(new ArrayList<>());
      }
      drills.get(drills.size() - 1).add(p);
      last = p;
    }
    return drills;
  }

  /** All plantings of a plan, by bed and in the order of their lines. */
  public static List<Planting> of(Plan plan) {
    List<Planting> found = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      List<Entry<PlantChoice>> lines = bed.attributes().all(PlantingKeys.PLANTS);
      if (bed.shape().isEmpty()) {
        continue;
      }
      PlacedPlants placed = PlacedPlants.of(plan, bed);
      found.addAll(placed.plantings());
      if (lines.isEmpty()) {
        found.addAll(Followers.of(plan, bed, List.of()));
        continue;
      }
      List<Shape> pieces = BedSlices.of(plan, bed, placed.rest());
      List<Planting> rows = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        rows.add(lay(plan, bed, lines.get(i).place(), lines.get(i).value(), pieces.get(i)));
      }
      List<Planting> followers = Followers.of(plan, bed, rows);
      for (Planting row : rows) {
        found.add(row);
        followers.stream().filter(f -> f.first() == row).forEach(found::add);
      }
    }
    return List.copyOf(found);
  }

  /** The trees whose stems stand in a bed. */
  private static List<Element.Tree> stems(Plan plan, Element.Bed bed) {
    Predicate<Point> inside = bed.shape().insideTest();
    return plan.all(Element.Tree.class).stream().filter(t -> inside.test(t.at())).toList();
  }

  /** How far a plant keeps off stems: half its grown spread, and a foot at least. */
  public static Length offStem(Plant plant) {
    Length half = plant.size().spread().middle().div(2);
    return half.compareTo(OFF_STEM) > 0 ? half : OFF_STEM;
  }

  /** Whether a plant keeps off all stems. */
  private static boolean isOffStems(Point at, Plant plant, List<Element.Tree> stems) {
    Length least = offStem(plant);
    return stems.stream().allMatch(t -> t.at().distance(at).compareTo(least) >= 0);
  }

  static Planting lay(
      Plan plan, Element.Bed bed, SourceRef place, PlantChoice choice, Shape ground) {
    List<Element.Tree> stems = stems(plan, bed);
    Plant plant = PlantCatalogue.of(plan).plant(choice.plant());
    Length spacing = choice.spacing().orElseGet(() -> plant.size().inRow().middle());
    Length rows = choice.rowSpacing().orElseGet(() -> defaultRows(choice, plant, spacing));
    List<Point> lattice = places(bed, place, ground, spacing, rows, choice.layout());
    // Beside a row in a part of the bed stand others, beside one in all of it nobody.
    boolean isAlone = ground.area().compareTo(bed.shape().area().times(0.999)) > 0;
    Length edge = isAlone ? spacing.times(Lattice.ROW_EDGE) : spacing.div(2);
    List<Point> at =
        (lattice.isEmpty() ? Lattice.oneRow(ground, spacing, edge) : lattice)
            .stream().filter(p -> isOffStems(p, plant, stems)).toList();
    return new Planting(bed, place, choice, plant, ground, spacing, rows, at, Optional.empty());
  }

  /** The places of a lattice in a part of a bed; what asks for too many is told where. */
  static List<Point> places(
      Element.Bed bed, SourceRef place, Shape ground, Length spacing, Length rows, Layout layout) {
    try {
      return Lattice.points(ground, spacing, rows, layout);
    } catch (IllegalArgumentException e) {
      throw new PlanException(
          ProblemCode.LIMIT, place, bed.id() + ": " + e.getMessage() + "; give a wider spacing");
    }
  }

  /**
   * In a bed, annuals stand equally far both ways. What stays for years keeps the rows of its
   * source where they are wider: crowns of asparagus a foot apart meet in the row and need three to
   * four feet across it, and shrubs need room to be picked.
   */
  private static Length defaultRows(PlantChoice choice, Plant plant, Length spacing) {
    Length lattice = Lattice.rowSpacing(spacing, choice.layout());
    boolean stays = choice.spacing().isEmpty() && !plant.growth().season().isAnnual();
    Length rows = plant.size().rows().middle();
    return stays && (plant.growth().form().isWoody() || rows.compareTo(lattice) > 0)
        ? rows
        : lattice;
  }

  /** The trees whose species the plan names. */
  public static List<Specimen> specimens(Plan plan) {
    List<Specimen> found = new ArrayList<>();
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      Optional<Trained> trained = tree.attributes().get(Trained.KEY);
      boolean inGrass = !tree.attributes().all(PlantingKeys.IN_GRASS).isEmpty();
      for (Entry<String> e : tree.attributes().all(PlantingKeys.SPECIES)) {
        Plant plant = PlantCatalogue.of(plan).plant(e.value());
        found.add(
            new Specimen(
                tree,
                e.place(),
                plant,
                inGrass,
                trained,
                tree.attributes().get(PlantingKeys.STOCK)));
      }
    }
    return List.copyOf(found);
  }
}
