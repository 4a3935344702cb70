package yardloom.work.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;
import yardloom.work.cost.CostEstimate.Driver;
import yardloom.work.cost.CostEstimate.Row;
import yardloom.work.cost.Sampling.Percentiles;
import yardloom.work.labour.TaskLoad;

/** Gives what the yard may cost, by sampling prices, depths, measures and pace together. */
public final class CostCalculator implements Calculator {
  private static final Source TAPE =
      Source.memory("Ground measured by tape is off by up to 3 %", "recalled from practice", 0, "");
  private static final Source DEPTH =
      Source.memory(
          "Depths as spread differ by a tenth, and chips pack", "recalled from practice", 0, "");

  /** Inputs that all lines of sheet mulch share. */
  private static final Spread MEASURE = new Spread(0.97, 1, 1.03, "tape error", TAPE);

  private static final Spread SPREADING = new Spread(0.9, 1, 1.15, "depth and settling", DEPTH);

  @Override
  public String id() {
    return "work.cost";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.BILL, YardFacts.LOADS, TaskLoad.FACT);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(CostEstimate.FACT, YardFacts.LOCAL_RATES);
  }

  /**
   * One priced thing.
   *
   * @param units how many of the price's units, likely
   * @param ground whether its amount follows the measured ground
   * @param bulk whether its amount follows the spread depth
   * @param pace factor of the amount, likely 1; labour only
   */
  private record Item(
      String name,
      Derived<?> amount,
      double units,
      Price price,
      boolean ground,
      boolean bulk,
      Spread pace) {}

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (var entry : plan.attributes().all(Price.KEY)) {
      Price p = entry.value();
      out.give(
          YardFacts.LOCAL_RATES,
          new LocalRate(LocalRate.Kind.PRICE, p.item(), p.unit(), p.perUnit(), entry.place()));
    }
    PriceBook book = PriceBook.of(plan, in.find(YardFacts.REGION));
    List<Item> items = new ArrayList<>();
    List<String> unpriced = new ArrayList<>();
    Set<String> delivered = new HashSet<>();
    for (BillLine line : BillSums.byItem(in.all(YardFacts.BILL))) {
      item(line, book).ifPresentOrElse(items::add, () -> unpriced.add(line.item()));
      String bulk = BillLine.stem(line.item());
      if (delivered.add(bulk)) {
        delivery(bulk, in.all(YardFacts.LOADS), book).ifPresent(items::add);
      }
    }
    labour(in.all(TaskLoad.FACT), book).ifPresent(items::add);
    if (!items.isEmpty()) {
      out.give(CostEstimate.FACT, estimate(items, unpriced));
    }
  }

  private static Optional<Item> item(BillLine line, PriceBook book) {
    Object amount = line.order().value();
    boolean mulch = line.group() == BillGroup.SHEET_MULCH;
    return book.find(line)
        .map(
            p ->
                new Item(
                    line.item(),
                    line.order(),
                    LocalRate.units(amount, p.unit()),
                    p,
                    mulch,
                    mulch && amount instanceof Volume,
                    fixed()));
  }

  /** Bulk comes in loads, for each phase by itself; how many depends on the truck. */
  private static Optional<Item> delivery(String item, List<BulkLoads> all, PriceBook book) {
    Derived.Builder why = Derived.by("sum over phases", Source.plan("loads of the plan"));
    int fewest = 0;
    int likely = 0;
    int most = 0;
    Source source = null;
    for (BulkLoads loads : all) {
      if (loads.item().equals(item)) {
        why.from(loads.phase().title(), loads.likely());
        fewest += loads.fewest().value();
        likely += loads.likely().value();
        most += loads.most().value();
        source = loads.likely().source();
      }
    }
    if (likely == 0) {
      return Optional.empty();
    }
    Derived<Integer> loads = why.gives(likely);
    double of = likely;
    Spread trucks = new Spread(fewest / of, 1, most / of, "load size", source);
    return book.find("delivery of bulk", "delivery", likely)
        .map(p -> new Item("delivery of " + item, loads, of, p, false, false, trucks));
  }

  private static Optional<Item> labour(List<TaskLoad> tasks, PriceBook book) {
    TaskLoad.Sum all = TaskLoad.sum(tasks);
    double low = all.low().hours();
    double likely = all.likely().hours();
    double high = all.high().hours();
    Derived.Builder why = Derived.by("sum over tasks", Source.plan("tasks of the plan"));
    tasks.forEach(t -> why.from(t.title() + " (" + t.phase().id() + ")", t.likely()));
    if (likely == 0) {
      return Optional.empty();
    }
    Derived<TimeSpan> hours = why.gives(all.likely());
    Spread pace =
        new Spread(low / likely, 1, high / likely, "pace of work", Source.plan("labour table"));
    double units = likely;
    return book.find("labour", "labour", hours.value())
        .map(p -> new Item("labour", hours, units, p, false, false, pace));
  }

  private static Spread fixed() {
    return new Spread(1, 1, 1, "", Source.plan("as ordered"));
  }

  private static CostEstimate estimate(List<Item> items, List<String> unpriced) {
    Inputs inputs = Inputs.of(items);
    double[] likely = inputs.likely();
    Sampling sampling = new Sampling(inputs.spreads());
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      int at = i;
      rows.add(row(items.get(i), inputs.cost(at, likely), sampling.of(x -> inputs.cost(at, x))));
    }
    Percentiles all = sampling.of(inputs::total);
    Derived.Builder why = Derived.by("percentiles of the sampled sum of all rows", Sampling.SOURCE);
    rows.forEach(r -> why.from(r.item(), r.p50()));
    Row total =
        new Row(
            "total",
            sum(rows),
            why.gives(Money.amount(all.p10())),
            why.gives(Money.amount(all.p50())),
            why.gives(Money.amount(all.p90())));
    boolean demo = items.stream().anyMatch(i -> i.price().demo());
    return new CostEstimate(rows, total, unpriced, drivers(inputs), demo);
  }

  private static Derived<Money> sum(List<Row> rows) {
    Derived.Builder why = Derived.by("sum over rows", Source.plan("rows of the table"));
    rows.forEach(r -> why.from(r.item(), r.likely()));
    return why.gives(rows.stream().map(r -> r.likely().value()).reduce(Money::plus).orElseThrow());
  }

  private static String amount(Item item) {
    return Unit.byWord(item.price().unit()).map(u -> "amount in " + u.symbol()).orElse("amount");
  }

  private static Row row(Item item, double likely, Percentiles p) {
    Spread price = item.price().perUnit();
    Derived<Money> atLikely =
        Derived.by(amount(item) + " × likely price", price.source())
            .from("amount", item.amount())
            .from("likely price", price.likely())
            .gives(Money.amount(likely));
    return new Row(
        item.name(),
        atLikely,
        why(item, "10th").gives(Money.amount(p.p10())),
        why(item, "50th").gives(Money.amount(p.p50())),
        why(item, "90th").gives(Money.amount(p.p90())));
  }

  /** The factors with the three values of each, so that the percentile can be drawn again. */
  private static Derived.Builder why(Item item, String percentile) {
    List<Spread> factors = new ArrayList<>();
    if (item.ground()) {
      factors.add(MEASURE);
    }
    if (item.bulk()) {
      factors.add(SPREADING);
    }
    if (item.pace().high() > item.pace().low()) {
      factors.add(item.pace());
    }
    StringBuilder formula = new StringBuilder(percentile + " percentile of units × price");
    factors.forEach(f -> formula.append(" × ").append(f.cause()));
    Derived.Builder why =
        Derived.by(formula + ", each triangular", item.price().perUnit().source())
            .from("amount", item.amount())
            .from("units, of " + item.price().unit(), item.units());
    spread(why, "price", item.price().perUnit());
    factors.forEach(f -> spread(why, f.cause(), f));
    return why;
  }

  private static void spread(Derived.Builder why, String name, Spread spread) {
    why.from(name + ", low", spread.low())
        .from(name + ", likely", spread.likely())
        .from(name + ", high", spread.high());
  }

  /** What is sampled: the measures that all mulch shares, and price and pace of every item. */
  private record Inputs(List<Item> items, List<Spread> spreads) {
    private static final int SHARED = 2;

    static Inputs of(List<Item> items) {
      List<Spread> spreads = new ArrayList<>(List.of(MEASURE, SPREADING));
      for (Item item : items) {
        spreads.add(item.price().perUnit());
        spreads.add(item.pace());
      }
      return new Inputs(items, spreads);
    }

    /** Every input at its likely value. */
    double[] likely() {
      return spreads.stream().mapToDouble(Spread::likely).toArray();
    }

    /** Whose input number {@code at} is. */
    String name(int at) {
      return at < SHARED ? "all mulched ground" : items.get((at - SHARED) / 2).name();
    }

    double cost(int item, double[] drawn) {
      Item it = items.get(item);
      double measure = drawn[0];
      double spreading = drawn[1];
      double price = drawn[SHARED + 2 * item];
      double pace = drawn[SHARED + 2 * item + 1];
      double units = it.units() * pace;
      units *= it.ground() ? measure : 1;
      units *= it.bulk() ? spreading : 1;
      return units * price;
    }

    double total(double[] drawn) {
      double sum = 0;
      for (int i = 0; i < items.size(); i++) {
        sum += cost(i, drawn);
      }
      return sum;
    }
  }

  private static List<Driver> drivers(Inputs inputs) {
    double[] likely = inputs.likely();
    List<Driver> drivers = new ArrayList<>();
    for (int at = 0; at < likely.length; at++) {
      Spread input = inputs.spreads().get(at);
      double[] drawn = likely.clone();
      drawn[at] = input.low();
      double low = inputs.total(drawn);
      drawn[at] = input.high();
      double high = inputs.total(drawn);
      if (high - low > 1e-9) {
        drivers.add(
            new Driver(inputs.name(at), input.cause(), Money.amount(low), Money.amount(high)));
      }
    }
    drivers.sort(
        Comparator.comparing(Driver::swing)
            .reversed()
            .thenComparing(Driver::name)
            .thenComparing(Driver::cause));
    return drivers;
  }
}
