package yardloom.planting.stock;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.unit.Money;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words for forms of stock that the shipped table lacks or has wrong, and for spares. */
public final class StockWords {
  private static final int FULLEST = 1000;
  private static final double LONGEST_MIN = 960;
  private static final double MOST_SPARES = 0.5;

  private StockWords() {}

  @Verb(
      help =
          "Gives a form in which plants are bought, for `stock:` of a plant: how long one plant"
              + " takes to set, how many plants a piece holds, and what a piece costs.",
      example =
          "stockForm('tray of 50', like: 'plug', holds: 50, minutes: 0.9, price: 32.money,"
              + " source: publication('List', by: 'a nursery', seen: 'memory'))")
  public static void stockForm(
      PlanScope plan,
      @Arg(name = "name", help = "as `stock:`, bill and price book call it") String name,
      @Opt(
              name = "like",
              help = "a shipped form that is planted in the same way, such as 'pot 1 gal'",
              required = true)
          String like,
      @Opt(
              name = "minutes",
              help = "of one person to set one plant",
              fallback = "as the form it is like")
          Number minutes,
      @Opt(name = "fastest", help = "the fewest minutes", fallback = "the likely") Number fastest,
      @Opt(name = "slowest", help = "the most minutes", fallback = "the likely") Number slowest,
      @Opt(name = "holds", help = "plants in one piece, which is sold whole", fallback = "1")
          Number holds,
      @Opt(name = "price", help = "likely price of one piece", fallback = "looked up by its name")
          Money price,
      @Opt(name = "low", help = "lowest price", fallback = "the likely price") Money low,
      @Opt(name = "high", help = "highest price", fallback = "the likely price") Money high,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    if (minutes == null && (fastest != null || slowest != null)) {
      throw missing(plan, "with `fastest:` or `slowest:` go the likely `minutes:`");
    }
    if (price == null && (low != null || high != null)) {
      throw missing(plan, "with `low:` or `high:` goes a likely `price:`");
    }
    OwnTable.ofOne(
        plan,
        "stock form",
        source,
        from ->
            add(
                plan,
                name,
                like,
                Optional.ofNullable(minutes).map(m -> pace(fastest, m, slowest, from)),
                holds == null ? 1 : holds.doubleValue(),
                Optional.ofNullable(price)
                    .map(p -> price(amount(low), p.amount(), amount(high), from))));
  }

  private static Number amount(Money price) {
    return price == null ? null : price.amount();
  }

  private static Spread price(Number low, double likely, Number high, Source from) {
    return Spread.given(low, likely, high, -Double.MIN_VALUE, "price", from);
  }

  @Verb(
      help =
          "Takes forms of stock from a table: columns form and like, and where wanted minutes,"
              + " fastest, slowest, holds, price, low, high and those of a source.",
      example = "stockForms('form,like,holds,minutes,price\\ntray of 72,plug,72,0.8,38')")
  public static void stockForms(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('stock.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "stock forms")
          String name) {
    OwnTable table = OwnTable.of(plan, csv, name, "stock forms");
    table.each(
        List.of("form", "like"),
        List.of("minutes", "fastest", "slowest", "holds", "price", "low", "high"),
        row -> read(plan, row, row.sourceOr(table.source())));
  }

  private static void read(PlanScope plan, DataRow row, Source source) {
    add(
        plan,
        row.text("form"),
        row.text("like"),
        OwnColumns.number(row, "minutes")
            .map(m -> pace(or(row, "fastest"), m, or(row, "slowest"), source)),
        OwnColumns.number(row, "holds").orElse(1.0),
        OwnColumns.number(row, "price")
            .map(p -> price(or(row, "low"), p, or(row, "high"), source)));
  }

  private static Double or(DataRow row, String column) {
    return OwnColumns.number(row, column).orElse(null);
  }

  private static Spread pace(Number fastest, Number minutes, Number slowest, Source source) {
    Spread pace = Spread.given(fastest, minutes, slowest, 0, "pace of work", source);
    if (pace.high() > LONGEST_MIN) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "minutes to set one plant are at most %.0f (16 h), got %s",
              LONGEST_MIN,
              pace.high()));
    }
    return pace;
  }

  private static void add(
      PlanScope plan,
      String name,
      String like,
      Optional<Spread> minutes,
      double holds,
      Optional<Spread> price) {
    StockForm model = StockForms.shipped(like);
    String called = name.strip();
    if (called.isEmpty() || model.isInDrills()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          called.isEmpty()
              ? "a stock form needs a name"
              : "what goes into drills is sold by length; give a form like one that is set by"
                  + " pieces");
    }
    Making.name("stock form", called);
    if (!(holds >= 1 && holds <= FULLEST && holds == Math.rint(holds))) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "holds is a whole number from 1 to " + FULLEST + ", got " + holds);
    }
    StockForm form =
        new StockForm(
            called,
            "",
            "",
            model.suits(),
            model.season(),
            model.task(),
            minutes.isPresent() ? minutes : model.minutes(),
            (int) holds,
            price);
    SourceRef at = plan.place();
    // Without a place: word or row of a table puts its own.
    Making.once(
        plan,
        SourceRef.NONE,
        StockForm.KEY,
        f -> f.isCalled(called),
        "the stock form '" + called + "'");
    plan.draft().attributes().add(StockForm.KEY, form, at);
  }

  private static PlanException missing(PlanScope plan, String what) {
    return new PlanException(ProblemCode.MISSING_OPTION, plan.place(), what);
  }

  @Verb(
      help =
          "Orders more plants than the plan holds, against losses: a share of each kind in beds,"
              + " rounded up. Trees and what is sown by row have none.",
      example = "plantSpares 0.05")
  public static void plantSpares(
      PlanScope plan,
      @Arg(name = "share", help = "of the plants of each kind, above 0 and up to 0.5")
          Number share) {
    double value = share.doubleValue();
    if (!(value > 0 && value <= MOST_SPARES)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "spares must be above 0 and at most " + MOST_SPARES + ", such as 0.05, got " + share);
    }
    if (plan.draft().attributes().has(Spares.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "the share of spares has been said already");
    }
    plan.draft().attributes().add(Spares.KEY, value, plan.place());
  }
}
