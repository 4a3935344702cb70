package yardloom.planting.placing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.Layout;
import yardloom.planting.placing.formula.RingPlaces;

/** The words that say where the plants of a bed stand, if not in a slice of it. */
public final class PlacingWords {
  private static final int MOST = 2000;

  private PlacingWords() {}

  @Verb(
      help = "Plants a ring round a tree, as in a guild; those that fall outside the bed are left.",
      example = "plantRing 'chives', round: 'Apple 1', radius: 3.ft, count: 8")
  public static void plantRing(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(name = "round", help = "the name of a tree", required = true) String round,
      @Opt(name = "radius", help = "from the tree's middle", required = true) Length radius,
      @Opt(
              name = "count",
              help = "how many, evenly round",
              fallback = "as many as stand apart as the catalogue says")
          Number count,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    checkRange(in, "radius", radius);
    int plants =
        count == null
            ? RingPlaces.count(
                radius,
                PlantCatalogue.of(in.draft().attributes()).plant(name).size().inRow().middle())
            : whole(in, "count", count);
    add(in, name, null, stock, new Placement.Ring(round, radius, plants, Optional.empty()));
  }

  @Verb(
      help = "Plants one at each point; those too near the bed's edge or what stands are left.",
      example = "plantAt 'rosemary', at: [point(6.ft, 8.ft), point(11.ft, 8.ft)]")
  public static void plantAt(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(name = "at", help = "where they stand", required = true) List<Point> at,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    if (at.isEmpty()) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, in.place(), "plantAt has no point");
    }
    add(in, name, null, stock, new Placement.Points(at));
  }

  @Verb(
      help = "Plants a row or hedge along a line in the bed.",
      example =
          "plantRow 'red currant', along: line([point(4.ft, 6.ft), point(4.ft, 30.ft)]), spacing:"
              + " 4.ft")
  public static void plantRow(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(name = "along", help = "the line they stand on", required = true) Line along,
      @Opt(
              name = "spacing",
              help = "distance of neighbours",
              fallback = "the middle of what the catalogue gives")
          Length spacing,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    add(in, name, spacing, stock, new Placement.Along(along));
  }

  @Verb(
      help = "Plants a group close together about a point of the bed.",
      example = "plantDrift 'sage', about: point(12.ft, 8.ft), count: 7")
  public static void plantDrift(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(name = "about", help = "its middle", required = true) Point about,
      @Opt(name = "count", help = "how many", required = true) Number count,
      @Opt(
              name = "spacing",
              help = "distance of neighbours",
              fallback = "the middle of what the catalogue gives")
          Length spacing,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    add(in, name, spacing, stock, new Placement.Drift(about, whole(in, "count", count)));
  }

  @Verb(
      help =
          "Mixes one kind among others over the whole bed, by its share of all plants or count;"
              + " much taller kinds have the side of the pole.",
      example = "plantMix 'garden strawberry', share: 0.7")
  public static void plantMix(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(
              name = "share",
              help = "part of all plants of the mix, above 0 and up to 1",
              fallback = "an equal part of what the others leave")
          Number share,
      @Opt(name = "count", help = "how many, instead of a share", fallback = "by share")
          Number count,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    if (share != null && count != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, in.place(), "give plantMix a share or a count, not both");
    }
    if (share != null && !(share.doubleValue() > 0 && share.doubleValue() <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "share must be above 0 and at most 1, got " + share);
    }
    if (in.element().attributes().has(PlantingKeys.PLANTS)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "plantMix fills the whole bed; it cannot follow `plant`, which takes a slice of it");
    }
    Optional<Integer> plants = Optional.ofNullable(count).map(c -> whole(in, "count", c));
    Optional<Double> part = Optional.ofNullable(share).map(Number::doubleValue);
    add(in, name, null, stock, new Placement.Mixed(part, plants));
  }

  @Verb(
      help =
          "Says why the kinds of this bed follow as written, also where a tall one shades a low"
              + " one.",
      example = "keepOrder 'lettuce likes the shade of the tomatoes'")
  public static void keepOrder(BedScope in, @Arg(name = "reason", help = "why") String reason) {
    if (reason.isBlank()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "keepOrder needs a reason, such as 'as agreed'");
    }
    if (in.element().attributes().has(PlantingKeys.KEPT_ORDER)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "`keepOrder` is already said of this bed");
    }
    in.element().attributes().add(PlantingKeys.KEPT_ORDER, reason, in.place());
  }

  @Verb(
      help = "Says that a kind of this bed is planted densely and thinned before a later season.",
      example = "plantThinned 'red currant', to: 6.ft, season: 4")
  public static void plantThinned(
      BedScope in,
      @Arg(name = "name", help = "a plant of this bed") String name,
      @Opt(name = "to", help = "distance of those that stay", required = true) Length to,
      @Opt(name = "season", help = "before which season of the garden, 2 to 10", required = true)
          Number season) {
    Plant found = PlantCatalogue.of(in.draft().attributes()).plant(name);
    checkRange(in, "to", to);
    int before = whole(in, "season", season);
    if (before < 2 || before > 10) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "season must be from 2 to 10, got " + before);
    }
    in.element()
        .attributes()
        .add(PlantingKeys.THINNED, new Thinned(found.name(), to, before), in.place());
  }

  static void add(BedScope in, String name, Length spacing, String stock, Placement where) {
    Plant found = PlantCatalogue.of(in.draft().attributes()).plant(name);
    if (found.growth().form() == Plant.Form.TREE) {
      throw new PlanException(
          ProblemCode.MISPLACED_WORD,
          in.place(),
          "'" + found.name() + "' is a tree; give a tree with a place and its species");
    }
    if (spacing != null) {
      checkRange(in, "spacing", spacing);
    }
    PlantChoice choice =
        new PlantChoice(
            found.name(),
            Optional.ofNullable(spacing),
            Optional.empty(),
            Layout.STAGGERED,
            Optional.empty(),
            Optional.ofNullable(stock),
            false);
    in.element().attributes().add(PlantingKeys.PLACED, new Placed(choice, where), in.place());
  }

  private static int whole(BedScope in, String what, Number value) {
    return whole(in, what, value, 1, MOST);
  }

  static int whole(BedScope in, String what, Number value, int least, int most) {
    double given = value.doubleValue();
    if (!(given >= least && given <= most && given == Math.rint(given))) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          what + " must be a whole number from " + least + " to " + most + ", got " + value);
    }
    return (int) given;
  }

  static void checkRange(BedScope in, String what, Length value) {
    if (value.inches() < 1 || value.feet() > 60) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          String.format(
              Locale.ROOT,
              "%s must be between 1 in (2.5 cm) and 60 ft (18 m), got %s",
              what,
              Say.size(value)));
    }
  }
}
