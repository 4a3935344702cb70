package yardloom.planting.placing;

import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.Layout;

/** The words that planting adds to beds and trees. */
public final class PlantingWords {
  private static final Length CLOSEST = Length.inches(1);
  private static final Length WIDEST = Length.feet(60);

  static final String STOCK_HELP =
      "as what it is bought, such as 'pot 1 gal', 'plug' or 'bare root 4 ft'";
  static final String USUAL_STOCK = "what is usual for the kind and the season of the work";

  private PlantingWords() {}

  @Verb(
      help =
          "Plants one kind in the bed, or in a part of it; several follow along the bed, much"
              + " taller ones nearer the pole.",
      example = "plant 'garden strawberry', spacing: 12.inch, layout: 'staggered', share: 0.5")
  public static void plant(
      BedScope in,
      @Arg(name = "name", help = "a plant of the catalogue") String name,
      @Opt(
              name = "spacing",
              help = "distance of neighbours in a row",
              fallback = "the middle of what the catalogue gives")
          Length spacing,
      @Opt(
              name = "rowSpacing",
              help = "distance of rows",
              fallback =
                  "the spacing (staggered: 0.87 of it); the catalogue's rows for shrubs and vines,"
                      + " and for perennials where they are wider")
          Length rowSpacing,
      @Opt(
              name = "layout",
              help = "how the plants stand",
              fallback = "square",
              choices = Layout.class)
          String layout,
      @Opt(
              name = "share",
              help = "part of the bed's length, above 0 and up to 1",
              fallback = "an equal part of what the other plants leave")
          Number share,
      @Opt(
              name = "standing",
              help = "whether they stand already; what does not is bought and planted",
              fallback = "false")
          Boolean standing,
      @Opt(name = "stock", help = STOCK_HELP, fallback = USUAL_STOCK) String stock) {
    Plant found = PlantCatalogue.of(in.draft().attributes()).plant(name);
    if (found.growth().form() == Plant.Form.TREE) {
      throw new PlanException(
          ProblemCode.MISPLACED_WORD,
          in.place(),
          "'"
              + found.name()
              + "' is a tree; give a tree with a place and write species '"
              + found.name()
              + "' in its block");
    }
    checkRange("spacing", spacing);
    checkRange("rowSpacing", rowSpacing);
    if (share != null && !(share.doubleValue() > 0 && share.doubleValue() <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "share must be above 0 and at most 1, got " + share);
    }
    PlantChoice choice =
        new PlantChoice(
            found.name(),
            Optional.ofNullable(spacing),
            Optional.ofNullable(rowSpacing),
            Choices.parse(Layout.class, layout, Layout.SQUARE),
            Optional.ofNullable(share).map(Number::doubleValue),
            Optional.ofNullable(stock),
            Boolean.TRUE.equals(standing));
    in.element().attributes().add(PlantingKeys.PLANTS, choice, in.place());
  }

  static void checkRange(String what, Length value) {
    if (value != null && (value.compareTo(CLOSEST) < 0 || value.compareTo(WIDEST) > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "%s must be between 1 in (2.5 cm) and 60 ft (18 m), got %s; check the" + " unit",
              what,
              Say.size(value)));
    }
  }

  @Verb(
      help = "Says what kind of tree it is, by its catalogue name, and what grows below it.",
      example = "species 'apple (semi-dwarf)', below: 'grass'")
  public static void species(
      TreeScope in,
      @Arg(name = "name", help = "a tree or shrub of the catalogue") String name,
      @Opt(
              name = "below",
              help = "what covers the ground below: grass draws water too",
              fallback = "mulch",
              choices = Below.class)
          String below,
      @Opt(name = "stock", help = STOCK_HELP, fallback = USUAL_STOCK) String stock) {
    Plant found = PlantCatalogue.of(in.draft().attributes()).plant(name);
    if (in.element().attributes().has(PlantingKeys.SPECIES)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), in.element().id() + " already has a species");
    }
    in.element().attributes().add(PlantingKeys.SPECIES, found.name(), in.place());
    if (stock != null) {
      in.element().attributes().add(PlantingKeys.STOCK, stock, in.place());
    }
    if (Choices.parse(Below.class, below, Below.MULCH) == Below.GRASS) {
      if (found.draw().crop().inGrass().isEmpty()) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            in.place(),
            "no figure is known for the water that '"
                + found.name()
                + "' and grass below it draw together; leave out below: 'grass' and count the"
                + " grass elsewhere");
      }
      in.element().attributes().add(PlantingKeys.IN_GRASS, true, in.place());
    }
  }
}
