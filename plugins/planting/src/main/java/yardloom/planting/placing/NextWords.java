package yardloom.planting.placing;

import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.YearDays;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.Layout;

/** The word by which one crop follows another on the same ground. */
public final class NextWords {
  private static final int FEWEST_DAYS = 20;
  private static final int MOST_DAYS = 330;

  private NextWords() {}

  @Verb(
      help =
          "Plants an annual on the ground of another of the bed, in the same year, once that is over.",
      example = "plantNext 'pole bean', after: 'pea', spacing: 6.inch, rowSpacing: 18.inch")
  public static void plantNext(
      BedScope in,
      @Arg(name = "name", help = "an annual of the catalogue") String name,
      @Opt(
              name = "after",
              help = "the annual whose ground it takes, planted with `plant` or `plantNext`",
              required = true)
          String after,
      @Opt(
              name = "on",
              help = "the day it is planted, as '06-01'; what stands there goes then",
              fallback = "the first day in season after the other is over")
          String on,
      @Opt(
              name = "days",
              help = "from planting until it is over, 20 to 330, as of a variety",
              fallback = "the stages of its crop in FAO-56; what is planted in fall: till picked")
          Number days,
      @Opt(
              name = "spacing",
              help = "distance of neighbours in a row",
              fallback = "the middle of what the catalogue gives")
          Length spacing,
      @Opt(name = "rowSpacing", help = "distance of rows", fallback = "the spacing")
          Length rowSpacing,
      @Opt(
              name = "layout",
              help = "how the plants stand",
              fallback = "square",
              choices = Layout.class)
          String layout,
      @Opt(name = "stock", help = PlantingWords.STOCK_HELP, fallback = PlantingWords.USUAL_STOCK)
          String stock) {
    PlantCatalogue catalogue = PlantCatalogue.of(in.draft().attributes());
    Plant found = catalogue.plant(name);
    Plant before = catalogue.plant(after);
    annual(in, before, "follow");
    annual(in, found, "come after");
    PlantingWords.checkRange("spacing", spacing);
    PlantingWords.checkRange("rowSpacing", rowSpacing);
    if (days == null && found.draw().crop().stages().isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          in.place(),
          "no days are known for the crop of '" + found.name() + "'; give days:");
    }
    PlantChoice choice =
        new PlantChoice(
            found.name(),
            Optional.ofNullable(spacing),
            Optional.ofNullable(rowSpacing),
            Choices.parse(Layout.class, layout, Layout.SQUARE),
            Optional.empty(),
            Optional.ofNullable(stock),
            false);
    Optional<MonthDay> day = Optional.ofNullable(on).map(text -> YearDays.read(in.place(), text));
    Optional<Integer> count =
        Optional.ofNullable(days)
            .map(d -> PlacingWords.whole(in, "days", d, FEWEST_DAYS, MOST_DAYS));
    in.element()
        .attributes()
        .add(PlantingKeys.NEXT, new Next(choice, before.name(), day, count), in.place());
  }

  private static void annual(BedScope in, Plant plant, String what) {
    if (!plant.growth().season().isAnnual()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "'"
              + plant.name()
              + "' stays for years; nothing can "
              + what
              + " it on its ground in the same year. Give two annuals, or a share of the bed to"
              + " each with plant");
    }
  }
}
