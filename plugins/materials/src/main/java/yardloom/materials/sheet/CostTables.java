package yardloom.materials.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.Material;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.BagOrBulk;
import yardloom.materials.calc.BagOrBulk.Offer;
import yardloom.materials.calc.WholePieces;
import yardloom.materials.data.PriceBook;
import yardloom.materials.model.CostEstimate;
import yardloom.materials.model.Price;

/** Tables of cost, of what drives it, and of bags or bulk. */
public final class CostTables {
  private static final String DEMO =
      "Prices marked so in the appendix are invented for demonstration: put your own in with"
          + " `price` or `priceBook`.";

  private CostTables() {}

  /** All of them. */
  public static List<TableMaker> all() {
    return List.of(new Cost(), new Drivers(), new Bags());
  }

  /** Cost of every priced line. */
  private static final class Cost implements TableMaker {
    @Override
    public String id() {
      return "materials-cost";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(CostEstimate.FACT);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Cost range")
              .column(Column.text("item", "Item"))
              .column(Column.of("p10", "Low (P10)", Measure.MONEY))
              .column(Column.of("p50", "Likely (P50)", Measure.MONEY))
              .column(Column.of("p90", "High (P90)", Measure.MONEY));
      Optional<CostEstimate> found = facts.find(CostEstimate.FACT);
      if (found.isEmpty()) {
        return table.build();
      }
      CostEstimate cost = found.get();
      cost.rows().forEach(r -> table.row(cells(r)));
      table.total(cells(cost.total()));
      if (cost.demo()) {
        table.note(DEMO);
      }
      if (!cost.unpriced().isEmpty()) {
        table.note("Not priced: " + String.join(", ", cost.unpriced()) + ".");
      }
      return table
          .note(
              "One in ten cases lies below P10, one in ten above P90; rows do not add up to the"
                  + " total's percentiles, because not everything goes wrong at once.")
          .note("Without taxes, permits, disposal and hired machines.")
          .build();
    }

    private static Cell[] cells(CostEstimate.Row row) {
      return new Cell[] {
        Cell.text(row.item()), Cell.of(row.p10()), Cell.of(row.p50()), Cell.of(row.p90())
      };
    }
  }

  /** The inputs that make the total uncertain. */
  private static final class Drivers implements TableMaker {
    private static final int MOST = 8;

    @Override
    public String id() {
      return "materials-cost-drivers";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(CostEstimate.FACT);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "What drives the cost range")
              .column(Column.text("item", "Item"))
              .column(Column.text("cause", "Cause"))
              .column(Column.of("low", "Total if low", Measure.MONEY))
              .column(Column.of("high", "Total if high", Measure.MONEY))
              .column(Column.of("swing", "Swing", Measure.MONEY));
      facts
          .find(CostEstimate.FACT)
          .ifPresent(
              cost ->
                  cost.drivers().stream()
                      .limit(MOST)
                      .forEach(
                          d ->
                              table.row(
                                  Cell.text(d.name()),
                                  Cell.text(d.cause()),
                                  Cell.of(d.low()),
                                  Cell.of(d.high()),
                                  Cell.of(d.swing()))));
      return table.note("Each alone at its low and high value, all others likely.").build();
    }
  }

  /** Bags or bulk. */
  private static final class Bags implements TableMaker {
    @Override
    public String id() {
      return "materials-bags-or-bulk";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.LOADS, YardFacts.REGION);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      PriceBook book = PriceBook.of(plan, facts.find(YardFacts.REGION));
      Table.Builder table =
          Table.titled(id(), "Bags or bulk")
              .column(Column.text("item", "Item"))
              .column(Column.of("order", "Order", Measure.VOLUME))
              .column(Column.of("bags", "Bags", Measure.COUNT))
              .column(Column.of("in-bags", "In bags", Measure.MONEY))
              .column(Column.of("in-bulk", "In bulk", Measure.MONEY))
              .column(Column.of("break-even", "Bulk wins from", Measure.VOLUME));
      for (BulkLoads loads : facts.all(YardFacts.LOADS)) {
        boolean compost = loads.item().equals(Material.COMPOST.title());
        addRow(
            table,
            loads,
            book,
            compost ? "compost bag, 1 cu ft" : "mulch bag, 2 cu ft",
            Volume.cubicFeet(compost ? 1 : 2));
      }
      return table.note(DEMO).build();
    }

    private static void addRow(
        Table.Builder table, BulkLoads loads, PriceBook book, String bag, Volume bagVolume) {
      Volume order = loads.order().value();
      Offer offer =
          new Offer(
              bagVolume,
              likely(book, bag, 1),
              likely(book, loads.item(), order) / yardsIn(book, loads.item(), order),
              likely(book, "delivery of bulk", 1));
      Derived.Builder why =
          Derived.by(
                  "bags: ceil(order / bag) × price; bulk: loads × delivery + order × price",
                  BagOrBulk.SOURCE)
              .from("order", loads.order())
              .from("bag", bagVolume)
              .from("price of a bag", offer.bagPrice())
              .from("price of a cubic yard", offer.bulkPerYard())
              .from("delivery of a load", offer.delivery())
              .from("loads", loads.likely());
      OptionalDouble even = BagOrBulk.breakEvenYards(offer);
      table.row(
          Cell.text(loads.item()),
          Cell.of(loads.order()),
          Cell.of(why.gives(WholePieces.of(order, bagVolume))),
          Cell.of(why.gives(Money.amount(BagOrBulk.bags(order, offer)))),
          Cell.of(why.gives(Money.amount(BagOrBulk.bulk(order, offer, loads.likely().value())))),
          even.isPresent()
              ? Cell.of(why.gives(Volume.cubicYards(even.getAsDouble())))
              : Cell.text("never"));
    }

    private static double likely(PriceBook book, String item, Object amount) {
      return book.find(item, "", amount).map(p -> p.perUnit().likely()).orElse(0.0);
    }

    /** Yards in one unit of the price, whose unit may be another. */
    private static double yardsIn(PriceBook book, String item, Volume order) {
      Optional<Price> price = book.find(item, "", order);
      return price.map(p -> order.cubicYards() / PriceBook.units(p, order)).orElse(1.0);
    }
  }
}
