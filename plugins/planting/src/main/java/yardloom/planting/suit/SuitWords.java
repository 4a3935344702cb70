package yardloom.planting.suit;

import java.util.Arrays;
import java.util.List;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.rule.Household;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.suit.rule.Variety.Blooms;

/** The words about who lives with the plants and of which variety they are. */
public final class SuitWords {
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
    List<String> all =
        Arrays.stream(names.split(",")).map(String::trim).filter(n -> !n.isEmpty()).toList();
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
}
