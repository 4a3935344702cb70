package yardloom.work.own;

import java.util.List;
import java.util.Optional;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.work.cost.Price;
import yardloom.work.labour.OwnItem;

/** The words for what nothing else counts. */
public final class OwnWords {
  private static final double MOST = 1e6;

  private static final List<String> COLUMNS =
      List.of("item", "count", "unit", "price", "hours", "phase");

  private OwnWords() {}

  @Verb(
      help =
          "Adds a thing that nothing else counts: bill, cost, hours and phases follow it. Price and"
              + " hours are for one piece, or for one unit of the amount.",
      example = "item('cistern, 5000 gal', count: 1, price: 3900.money, hours: 9, phase: 'head')")
  public static void item(
      PlanScope plan,
      @Arg(name = "name", help = "what the bill calls it") String name,
      @Opt(name = "phase", help = "when it is needed", required = true, choices = WorkPhase.class)
          String phase,
      @Opt(name = "count", help = "how many, a whole number", fallback = "1") Number count,
      @Opt(
              name = "amount",
              help = "how much, instead of a count: a length, area, volume or weight",
              fallback = "none: it is counted")
          Quantity<?> amount,
      @Opt(
              name = "per",
              help = "the unit of the amount that price and hours are for",
              fallback = "piece")
          String per,
      @Opt(
              name = "price",
              help = "likely price of one unit",
              fallback = "none: looked up by the name")
          Money price,
      @Opt(name = "low", help = "lowest price", fallback = "the likely price") Money low,
      @Opt(name = "high", help = "highest price", fallback = "the likely price") Money high,
      @Opt(name = "hours", help = "hours of one person for one unit", fallback = "0") Number hours,
      @Opt(name = "of", help = "the name of the element it is for", fallback = "none") String of,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    SourceRef at = plan.place();
    Source from = source == null ? Source.plan("item of the plan") : source;
    String unit = unit(amount, per, at);
    String called = name(name, at);
    OwnItem item =
        new OwnItem(
            called,
            amount(name, count, amount, at),
            unit,
            hours(hours, at),
            Choices.parse(WorkPhase.class, phase),
            Optional.ofNullable(of),
            true,
            from);
    add(plan, item);
    if (price != null) {
      price(
          plan,
          called,
          unit,
          Price.spread(of(low, price), price.amount(), of(high, price), from, at));
    } else if (low != null || high != null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, at, "with `low:` or `high:` goes a likely `price:`");
    }
  }

  @Verb(
      help = "Adds work that nothing else counts, with the hours of one person for one unit of it.",
      example = "task('carry the old shed out', hours: 6, phase: 'earth')")
  public static void task(
      PlanScope plan,
      @Arg(name = "name", help = "what the labour table calls it") String name,
      @Opt(name = "phase", help = "when it is done", required = true, choices = WorkPhase.class)
          String phase,
      @Opt(name = "hours", help = "hours of one person for one unit", required = true) Number hours,
      @Opt(name = "count", help = "how many, a whole number", fallback = "1") Number count,
      @Opt(
              name = "amount",
              help = "how much, instead of a count: a length, area, volume or weight",
              fallback = "none: it is counted")
          Quantity<?> amount,
      @Opt(name = "per", help = "the unit of the amount that hours are for", fallback = "piece")
          String per,
      @Opt(name = "of", help = "the name of the element it is for", fallback = "none") String of,
      @Opt(name = "source", help = "as `publication` names it", fallback = "the plan")
          Source source) {
    SourceRef at = plan.place();
    double each = hours(hours, at);
    if (each == 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, at, "a task takes more than 0 hours; leave it out otherwise");
    }
    add(
        plan,
        new OwnItem(
            name(name, at),
            amount(name, count, amount, at),
            unit(amount, per, at),
            each,
            Choices.parse(WorkPhase.class, phase),
            Optional.ofNullable(of),
            false,
            source == null ? Source.plan("task of the plan") : source));
  }

  @Verb(
      help =
          "Takes items from a table: a header item,count,unit,price,hours,phase and a line for each;"
              + " unit is piece or the unit of the count, price and hours may be empty.",
      example = "itemBook('item,count,unit,price,hours,phase\\nbench,2,piece,180,0.5,finish')")
  public static void itemBook(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('items.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "item book")
          String name) {
    OwnTable table = OwnTable.of(plan, csv, name, "item book");
    table.each(COLUMNS, List.of(), row -> read(plan, row, row.sourceOr(table.source())));
  }

  private static void read(PlanScope plan, DataRow row, Source source) {
    String unit = row.text("unit").isEmpty() ? LocalRate.PIECE : row.text("unit");
    double count = row.number("count");
    SourceRef at = row.placeOf("count");
    Derived<?> amount =
        unit.equals(LocalRate.PIECE)
            ? Derived.given(whole(count, at), "count", row.place())
            : Derived.given(
                positive(
                    Quantity.of(
                        count,
                        Unit.byWord(unit).orElseThrow(() -> unknown(unit, row.placeOf("unit")))),
                    at),
                "amount",
                row.place());
    OwnItem item =
        new OwnItem(
            name(row.text("item"), row.placeOf("item")),
            amount,
            unit,
            hours(row.maybe("hours").orElse(0), row.placeOf("hours")),
            phase(row),
            Optional.empty(),
            true,
            source);
    add(plan, item);
    row.maybe("price")
        .ifPresent(
            p -> price(plan, item.name(), unit, Price.spread(p, p, p, source, plan.place())));
  }

  private static WorkPhase phase(DataRow row) {
    try {
      return Choices.parse(WorkPhase.class, row.text("phase"));
    } catch (PlanException e) {
      throw e.at(row.placeOf("phase"));
    }
  }

  private static void add(PlanScope plan, OwnItem item) {
    Optional<SourceRef> before =
        plan.draft().attributes().all(OwnItem.KEY).stream()
            .filter(e -> e.value().name().equals(item.name()))
            .map(e -> e.place())
            .findFirst();
    if (before.isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          plan.place(),
          "\""
              + item.name()
              + "\" is already given at "
              + before.get()
              + "; give it once with its count, or another name");
    }
    plan.draft().attributes().add(OwnItem.KEY, item, plan.place());
  }

  private static void price(PlanScope plan, String name, String unit, Spread each) {
    plan.draft().attributes().add(Price.KEY, new Price(name, unit, each, false), plan.place());
  }

  private static double of(Money given, Money likely) {
    return (given == null ? likely : given).amount();
  }

  private static String name(String name, SourceRef at) {
    if (name.isBlank()) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, at, "an item needs a name");
    }
    try {
      return Making.name("bill item", name.strip());
    } catch (PlanException e) {
      throw e.at(at);
    }
  }

  private static Derived<?> amount(String name, Number count, Quantity<?> amount, SourceRef at) {
    if (amount == null) {
      return Derived.given(whole(count == null ? 1 : count.doubleValue(), at), "count", at);
    }
    if (count != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE, at, "\"" + name + "\" has a count or an amount, not both");
    }
    return Derived.given(positive(amount, at), "amount", at);
  }

  private static Integer whole(double count, SourceRef at) {
    if (!(count >= 1 && count <= MOST && count == Math.rint(count))) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          at,
          "a count is a whole number from 1 to 1000000, got " + count);
    }
    return (int) count;
  }

  private static Quantity<?> positive(Quantity<?> amount, SourceRef at) {
    if (!(amount.si() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, at, "an amount is more than nothing, got " + amount);
    }
    return amount;
  }

  private static double hours(Number hours, SourceRef at) {
    double given = hours == null ? 0 : hours.doubleValue();
    if (!(given >= 0 && given <= 10_000)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, at, "hours for one unit are 0 to 10000, got " + hours);
    }
    return given;
  }

  /** The unit of price and hours: pieces for a count, else a unit of the amount's own kind. */
  private static String unit(Quantity<?> amount, String per, SourceRef at) {
    String unit = per == null ? LocalRate.PIECE : per;
    boolean fits =
        amount == null
            ? unit.equals(LocalRate.PIECE)
            : Unit.byWord(unit).filter(u -> u.dimension() == amount.dimension()).isPresent();
    if (!fits) {
      throw amount == null
          ? new PlanException(
              ProblemCode.WRONG_TYPE,
              at,
              "what is counted is priced by the piece; give `amount:` with `per: '" + per + "'`")
          : new PlanException(
              ProblemCode.MISSING_OPTION,
              at,
              "`per:` names the unit of the amount that price and hours are for, one of "
                  + Unit.words(amount.dimension())
                  + (per == null ? "" : "; got '" + per + "'"));
    }
    return unit;
  }

  private static PlanException unknown(String unit, SourceRef at) {
    return new PlanException(
        ProblemCode.UNKNOWN_WORD,
        at,
        "'" + unit + "' is not a unit; write piece or one of " + Unit.words());
  }
}
