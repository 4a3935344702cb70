package yardloom.work.cost;

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
import yardloom.work.cost.BagOrBulk.Offer;
import yardloom.work.haul.WholePieces;

/** Bags or bulk. */
public final class BagTable implements TableMaker {
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
    return table.note(CostTable.DEMO).build();
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
