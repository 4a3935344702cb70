package yardloom.work.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.facts.region.Spread;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * Prices by item and unit. The shipped ones are invented for demonstration and are used where the
 * plan asks for them only; a user's own go before them.
 *
 * <p>A line of the bill is priced by its own item, else by that without what stands behind its
 * comma, else as a plant by the form it is bought in, such as {@code pot 5 gal}, else by {@code
 * any} and its group.
 */
public final class PriceBook {
  /** On the plan: whether it asks for the invented prices. */
  public static final AttributeKey<Boolean> DEMONSTRATION =
      new AttributeKey<>("work.demonstration-prices", Boolean.class);

  private static final List<String> COLUMNS = List.of("item", "unit", "low", "likely", "high");

  private static final Set<String> GENERAL =
      Set.of("labour", "delivery of bulk", "mulch bag, 2 cu ft", "compost bag, 1 cu ft");

  private static final PriceBook DEMO =
      new PriceBook(
          DataTable.shipped(PriceBook.class, "price-demo.csv").rows().stream()
              .map(row -> price(row, row.source(), true))
              .toList());

  private final List<Price> prices;

  private PriceBook(List<Price> prices) {
    this.prices = List.copyOf(prices);
  }

  /** Invented prices, so that the tables have something to show. */
  public static PriceBook demo() {
    return DEMO;
  }

  /** The names that prices may be given for, with the unit of each and the invented price. */
  public static Catalogue catalogue() {
    List<Catalogue.Row> rows = new ArrayList<>();
    for (Price price : demo().prices) {
      Spread each = price.perUnit();
      rows.add(
          new Catalogue.Row(
              price.item(),
              Map.of(
                  "unit",
                  price.unit(),
                  "invented",
                  Say.number(each.low())
                      + ", "
                      + Say.number(each.likely())
                      + ", "
                      + Say.number(each.high()))));
    }
    return new Catalogue("prices", "Names on bills, and invented prices of a unit", rows);
  }

  /** What the plan says, then its region; the invented prices only where the plan asks for them. */
  public static PriceBook of(Plan plan, Optional<Region> region) {
    boolean invented = plan.attributes().get(DEMONSTRATION).orElse(false);
    return (invented ? demo() : new PriceBook(List.of()))
        .with(Region.ownFirst(region, plan.attributes().all(Price.KEY)));
  }

  /**
   * A user's book: a CSV with the columns item, unit, low, likely, high, and where wanted the
   * columns of a source (title, publisher, year, locator, standing).
   *
   * @throws PlanException with file and line for what is wrong in it
   */
  public static List<Price> read(String name, String csv) {
    Source source = Source.plan("price book " + name);
    Map<String, Integer> lines = new HashMap<>();
    List<Price> prices = new ArrayList<>();
    for (DataRow row : OwnColumns.rows(name, csv, COLUMNS, List.of())) {
      Price price = price(row, row.sourceOr(source), false);
      Integer before = lines.putIfAbsent(price.item() + " per " + price.unit(), row.place().line());
      if (before != null) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            row.placeOf("item"),
            price.item() + " per " + price.unit() + " already has a price in line " + before);
      }
      prices.add(price);
    }
    return List.copyOf(prices);
  }

  private static Price price(DataRow row, Source source, boolean demo) {
    String unit = row.text("unit");
    if (row.text("item").isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION, row.placeOf("item"), "a price is of an item of the bill");
    }
    String item;
    try {
      item = Price.name(row.text("item"));
    } catch (PlanException e) {
      throw e.at(row.placeOf("item"));
    }
    Spread perUnit =
        Price.spread(
            row.number("low"),
            row.number("likely"),
            row.number("high"),
            source,
            row.placeOf("likely"));
    if (!unit.equals(LocalRate.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          row.placeOf("unit"),
          "'" + unit + "' is not a unit; write piece, yd3, m3, ft, m, h or another unit word");
    }
    return new Price(item, unit, perUnit, demo);
  }

  /** This book with {@code own} prices before its own. */
  public PriceBook with(List<Price> own) {
    List<Price> all = new ArrayList<>(own);
    all.addAll(prices);
    return new PriceBook(all);
  }

  /** Whether the name is for no item of the bill, but for a group, labour, deliveries or bags. */
  static boolean isGeneral(String item) {
    return general().contains(item);
  }

  /** The names that are for no single item of a bill, sorted. */
  static Set<String> general() {
    Set<String> names = new TreeSet<>(GENERAL);
    for (BillGroup group : BillGroup.values()) {
      names.add("any " + group.title());
    }
    return names;
  }

  /** What it has prices for, in the order of the book. */
  public List<String> items() {
    return prices.stream().map(Price::item).toList();
  }

  /** The price of an item in a unit that measures {@code amount}, a quantity or a count. */
  public Optional<Price> find(String item, String group, Object amount) {
    return named(item, amount)
        .or(() -> named(BillLine.stem(item), amount))
        .or(() -> named("any " + group, amount));
  }

  /**
   * The price of what a line orders: by its item, else of a plant with the form it is bought in, as
   * the plan says or by the form's name, else by its group.
   */
  public Optional<Price> find(BillLine line) {
    Object amount = line.order().value();
    return named(line.item(), amount)
        .or(() -> named(BillLine.stem(line.item()), amount))
        .or(() -> line.stock().flatMap(s -> bought(s, amount)))
        .or(() -> named("any " + line.group().title(), amount));
  }

  private Optional<Price> bought(BillLine.Stock stock, Object amount) {
    Optional<Price> said =
        stock.price().map(p -> new Price(stock.names().get(0), LocalRate.PIECE, p, false));
    return said.filter(p -> measures(p.unit(), amount))
        .or(() -> stock.names().stream().flatMap(n -> named(n, amount).stream()).findFirst());
  }

  private Optional<Price> named(String item, Object amount) {
    return prices.stream()
        .filter(p -> p.item().equals(item) && measures(p.unit(), amount))
        .findFirst();
  }

  /** Whether a price per {@code unit} is for amounts of this kind. */
  static boolean measures(String unit, Object amount) {
    if (!(amount instanceof Quantity<?> q)) {
      return unit.equals(LocalRate.PIECE);
    }
    return Unit.byWord(unit).filter(u -> u.dimension() == q.dimension()).isPresent();
  }
}
