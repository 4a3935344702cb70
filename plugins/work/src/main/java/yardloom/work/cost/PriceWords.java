package yardloom.work.cost;

import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words about prices. */
public final class PriceWords {
  private PriceWords() {}

  @Verb(
      help = "Sets your own price of an item; it goes before all others.",
      example = "price('wood-chip mulch', 12.money, low: 0.money, high: 20.money, per: 'yd3')")
  public static void price(
      PlanScope plan,
      @Arg(name = "item", help = "the item on the bill, or 'any' and a group") String item,
      @Arg(name = "likely", help = "likely price of one unit") Money likely,
      @Opt(name = "low", help = "lowest price", fallback = "the likely price") Money low,
      @Opt(name = "high", help = "highest price", fallback = "the likely price") Money high,
      @Opt(name = "per", help = "unit: piece, yd3, m3, ft, m, h …", fallback = "piece")
          String per) {
    String csv =
        String.join(
            ",",
            quoted(Price.name(item)),
            quoted(per == null ? LocalRate.PIECE : per),
            Double.toString((low == null ? likely : low).amount()),
            Double.toString(likely.amount()),
            Double.toString((high == null ? likely : high).amount()));
    add(plan, "price", "item,unit,low,likely,high\n" + csv + "\n");
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  @Verb(
      help = "Takes your own price book: lines of item, unit, low, likely, high under a header.",
      example = "priceBook('item,unit,low,likely,high\\ncompost,yd3,30,35,50')")
  public static void priceBook(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('prices.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "price book")
          String name) {
    add(plan, name == null ? "price book" : name, csv);
  }

  @Verb(
      help = "Uses invented prices where the plan gives none; every sheet then says so.",
      example = "demonstrationPrices()")
  public static void demonstrationPrices(PlanScope plan) {
    plan.draft().attributes().add(PriceBook.DEMONSTRATION, true, plan.place());
  }

  @Verb(
      help = "Sets what an hour of labour is billed at: wage, overhead on it, markup on both.",
      example = "labourRate(wage: 24.money, overhead: 0.4, markup: 0.15)")
  public static void labourRate(
      PlanScope plan,
      @Opt(name = "wage", help = "paid to one person for an hour", required = true) Money wage,
      @Opt(
              name = "overhead",
              help = "share of the wage for insurance, taxes, tools and idle time",
              fallback = "0")
          Number overhead,
      @Opt(name = "markup", help = "share of wage and overhead for profit", fallback = "0")
          Number markup) {
    if (plan.draft().attributes().has(LabourRate.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "`labourRate` is already given; say it once");
    }
    LabourRate rate =
        LabourRate.of(wage, share("overhead", overhead, plan), share("markup", markup, plan), plan);
    plan.draft().attributes().add(LabourRate.KEY, rate, plan.place());
    plan.draft().attributes().add(Price.KEY, rate.price(), plan.place());
  }

  private static double share(String what, Number given, PlanScope plan) {
    double share = given == null ? 0 : given.doubleValue();
    if (!(share >= 0 && share <= 5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          what + " is a share from 0 to 5 (0.4 is 40 %), got " + given);
    }
    return share;
  }

  private static void add(PlanScope plan, String name, String csv) {
    new OwnTable(plan, name, csv)
        .reading(
            () ->
                PriceBook.read(name, csv)
                    .forEach(p -> plan.draft().attributes().add(Price.KEY, p, plan.place())));
  }

  @Verb(
      help = "Gives the price of an item here, with its source; the plan's own goes before it.",
      example =
          "localPrice('compost', likely: 30, low: 25, high: 40, unit: 'yd3',"
              + " source: publication('Prices', by: 'compost yard', seen: 'memory'))")
  public static void localPrice(
      PlanScope plan,
      @Arg(name = "item", help = "the item on the bill, or 'any' and a group") String item,
      @Opt(name = "likely", help = "money for one unit", required = true) Number likely,
      @Opt(name = "low", help = "least", fallback = "the likely") Number low,
      @Opt(name = "high", help = "most", fallback = "the likely") Number high,
      @Opt(name = "unit", help = "piece, yd3, m3, ft, m, h …", required = true) String unit,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    Spread perUnit;
    try {
      perUnit = Spread.given(low, likely, high, -Double.MIN_VALUE, "price", source);
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
    if (!unit.equals(LocalRate.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          plan.place(),
          "'"
              + unit
              + "' is no unit for this rate; write piece, yd3, m3, ft, m, h or another unit word");
    }
    String name = Price.name(item);
    Making.once(
        plan,
        Price.KEY,
        r -> r.item().equals(name) && r.unit().equals(unit),
        "the price of \"" + name + "\" per " + unit);
    plan.draft().attributes().add(Price.KEY, new Price(name, unit, perUnit, false), plan.place());
  }
}
