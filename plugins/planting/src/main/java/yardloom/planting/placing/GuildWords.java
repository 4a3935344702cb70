package yardloom.planting.placing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.RingPlaces;
import yardloom.planting.traits.Growth;

/** The word that plants a guild: rings round a tree, each of a kind that does something for it. */
public final class GuildWords {
  private static final int NAMED = 8;

  private GuildWords() {}

  @Verb(
      help =
          "Plants rings round a tree by what each kind does for it: grown, they touch and keep off"
              + " the stem.",
      example =
          "guild round: 'Apple 1', groundCover: 'woodland strawberry', mulchMaker: 'sterile comfrey',"
              + " insectPlant: 'yarrow', nitrogenFixer: 'wild indigo'")
  public static void guild(
      BedScope in,
      @Opt(name = "round", help = "the name of a tree", required = true) String round,
      @Opt(
              name = "groundCover",
              help = "a kind that covers the ground, next to the stem",
              fallback = "no such ring")
          String groundCover,
      @Opt(
              name = "mulchMaker",
              help = "a kind that is cut and left as mulch",
              fallback = "no such ring")
          String mulchMaker,
      @Opt(
              name = "insectPlant",
              help = "a kind that feeds bees and other insects",
              fallback = "no such ring")
          String insectPlant,
      @Opt(
              name = "nitrogenFixer",
              help = "a kind that fixes nitrogen, outermost",
              fallback = "no such ring")
          String nitrogenFixer,
      @Opt(
              name = "from",
              help = "the radius of the first ring",
              fallback = "half the grown spread of its kind, and a foot at least")
          Length from) {
    Map<GuildRole, String> kinds = new EnumMap<>(GuildRole.class);
    put(kinds, GuildRole.GROUND_COVER, groundCover);
    put(kinds, GuildRole.MULCH_MAKER, mulchMaker);
    put(kinds, GuildRole.INSECT_PLANT, insectPlant);
    put(kinds, GuildRole.NITROGEN_FIXER, nitrogenFixer);
    if (kinds.isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "guild has no ring; give at least one of groundCover, mulchMaker, insectPlant,"
              + " nitrogenFixer");
    }
    if (from != null) {
      PlacingWords.checkRange(in, "from", from);
    }
    Plant inner = null;
    Length radius = from;
    for (Map.Entry<GuildRole, String> e : kinds.entrySet()) {
      Plant plant = plant(in, e.getKey(), e.getValue());
      if (inner != null) {
        Length half = inner.size().spread().middle().div(2);
        radius = radius.plus(half).plus(plant.size().spread().middle().div(2));
      } else if (radius == null) {
        radius = Planting.offStem(plant);
      }
      inner = plant;
      int count = RingPlaces.count(radius, apart(plant));
      PlacingWords.add(
          in,
          plant.name(),
          null,
          null,
          new Placement.Ring(round, radius, count, Optional.of(e.getKey())));
    }
  }

  private static void put(Map<GuildRole, String> kinds, GuildRole role, String name) {
    if (name != null) {
      kinds.put(role, name);
    }
  }

  private static Length apart(Plant plant) {
    return plant.size().inRow().middle();
  }

  private static Plant plant(BedScope in, GuildRole role, String name) {
    PlantCatalogue catalogue = PlantCatalogue.of(in.draft().attributes());
    Plant plant = catalogue.plant(name);
    if (!Growth.roles(plant).contains(role.text())) {
      List<String> others =
          catalogue.all().stream()
              .filter(p -> p.growth().form() != Plant.Form.TREE && !p.growth().season().isAnnual())
              .filter(p -> Growth.roles(p).contains(role.text()))
              .map(p -> "'" + p.name() + "'")
              .limit(NAMED)
              .toList();
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "'"
              + plant.name()
              + "' is no "
              + role.text()
              + " in the catalogue; such as "
              + String.join(", ", others)
              + " are");
    }
    return plant;
  }
}
