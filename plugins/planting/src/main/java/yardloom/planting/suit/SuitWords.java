package yardloom.planting.suit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.rule.Household;
import yardloom.planting.suit.rule.LocalList;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.suit.rule.Variety.Blooms;

/** The words about who lives with the plants, of which variety they are, and what a place lists. */
public final class SuitWords {
  /** A genus with its capital, and what follows it. */
  private static final Pattern BOTANICAL =
      Pattern.compile("\\p{Lu}\\p{Ll}+( (x |× ?)?[\\p{Ll}-]+| (subsp|var)\\. [\\p{Ll}-]+)*");

  private SuitWords() {}

  @Verb(
      help = "Says who lives with the garden, so that plants that may harm them are named.",
      example = "household children: true, pets: true")
  public static void household(
      PlanScope plan,
      @Opt(name = "children", help = "whether small children play there", fallback = "false")
          Boolean children,
      @Opt(name = "pets", help = "whether dogs or cats run there", fallback = "false")
          Boolean pets) {
    AttributeKey<Household> key = Household.KEY;
    if (plan.draft().attributes().has(key)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the household has been said already");
    }
    plan.draft()
        .attributes()
        .add(
            key,
            new Household(Boolean.TRUE.equals(children), Boolean.TRUE.equals(pets)),
            plan.place());
  }

  @Verb(
      help = "Says of which variety a tree is, and how that bears and blooms.",
      example = "variety 'Stella', selfFruitful: true, blooms: 'early'")
  public static void variety(
      TreeScope tree,
      @Arg(name = "name", help = "its name at the nursery, or 'male' or 'female'") String name,
      @Opt(name = "selfFruitful", help = "whether it bears alone", fallback = "false")
          Boolean selfFruitful,
      @Opt(
              name = "blooms",
              help = "when it blooms beside others of its kind",
              fallback = "midseason",
              choices = Blooms.class)
          String blooms) {
    if (tree.element().attributes().has(Variety.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, tree.place(), tree.element().id() + " already has a variety");
    }
    tree.element()
        .attributes()
        .add(
            Variety.KEY,
            new Variety(
                "",
                List.of(name.trim()),
                Boolean.TRUE.equals(selfFruitful),
                Choices.parse(Blooms.class, blooms, Blooms.MIDSEASON)),
            tree.place());
  }

  @Verb(
      help = "Says of which varieties the plants of one kind in a bed are.",
      example = "varieties 'lowbush blueberry', names: 'Brunswick, Burgundy'")
  public static void varieties(
      BedScope bed,
      @Arg(name = "plant", help = "a plant of the catalogue") String plant,
      @Opt(name = "names", help = "names at the nursery, with commas between", required = true)
          String names,
      @Opt(name = "selfFruitful", help = "whether they bear alone", fallback = "false")
          Boolean selfFruitful) {
    String found = PlantCatalogue.of(bed.draft().attributes()).plant(plant).name();
    List<String> all = names(names);
    if (all.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, bed.place(), "`names:` has no name of a variety");
    }
    bed.element()
        .attributes()
        .add(
            Variety.KEY,
            new Variety(found, all, Boolean.TRUE.equals(selfFruitful), Blooms.MIDSEASON),
            bed.place());
  }

  @Verb(
      help =
          "Gives a list of plants that are native, watched or prohibited where the yard lies; in a"
              + " regional file it holds for all plans that take it.",
      example =
          "localPlants('prohibited', names: 'Rosa multiflora, Tamarix', say: 'not to be sold or"
              + " planted', source: publication('Weed act', by: 'the state', seen: 'read'))")
  public static void localPlants(
      PlanScope plan,
      @Arg(name = "list", help = "what it is a list of", choices = LocalList.Kind.class)
          String list,
      @Opt(
              name = "names",
              help = "names of the catalogue, or botanical ones from the genus on, with commas",
              required = true)
          String names,
      @Opt(name = "say", help = "what the list asks or forbids", fallback = "nothing") String say,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    List<String> all = names(names);
    if (all.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, plan.place(), "`names:` has no name of a plant");
    }
    PlantCatalogue catalogue = PlantCatalogue.of(plan.draft().attributes());
    for (String name : all) {
      boolean isCommon = catalogue.all().stream().anyMatch(p -> p.name().equalsIgnoreCase(name));
      if (!isCommon && !BOTANICAL.matcher(name).matches()) {
        throw new PlanException(
            ProblemCode.UNKNOWN_WORD,
            plan.place(),
            "`names:` has '"
                + name
                + "', which is neither a plant of the catalogue nor a botanical name such as"
                + " 'Rosa multiflora' or 'Tamarix'");
      }
    }
    plan.draft()
        .attributes()
        .add(
            LocalList.KEY,
            new LocalList(
                Choices.parse(LocalList.Kind.class, list), all, Optional.ofNullable(say), source),
            plan.place());
  }

  private static List<String> names(String text) {
    return Arrays.stream(text.split(",")).map(String::trim).filter(n -> !n.isEmpty()).toList();
  }
}
