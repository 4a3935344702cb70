package yardloom.work.cost;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.Material;
import yardloom.facts.region.LocalRate;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;
import yardloom.work.cost.BagOrBulk.Offer;
import yardloom.work.haul.WholePieces;

/** Gives bags or bulk for every bulk order, by the likely prices. */
public final class BagCalculator implements Calculator {
  private static final String DELIVERY = "delivery of bulk";

  /** Bags as they are sold, each under the name that price books have for it. */
  private enum Bag {
    COMPOST("compost bag, 1 cu ft", 1),
    MULCH("mulch bag, 2 cu ft", 2);

    private final String item;
    private final Volume volume;

    Bag(String item, double cubicFeet) {
      this.item = item;
      this.volume = Volume.cubicFeet(cubicFeet);
    }

    static boolean isFor(String item) {
      return item.equals(Material.COMPOST.title()) || item.equals(Material.WOOD_CHIPS.title());
    }

    static Bag of(String item) {
      return item.equals(Material.COMPOST.title()) ? COMPOST : MULCH;
    }
  }

  @Override
  public String id() {
    return "work.bags";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.LOADS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(BagChoice.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    PriceBook book = PriceBook.of(plan, in.find(YardFacts.REGION));
    // Soil and rock by the yard are carried home in bags by nobody.
    in.all(YardFacts.LOADS).stream()
        .filter(l -> Bag.isFor(l.item()))
        .forEach(l -> out.give(BagChoice.FACT, choice(l, book)));
  }

  private static BagChoice choice(BulkLoads loads, PriceBook book) {
    Volume order = loads.order().value();
    Bag bag = Bag.of(loads.item());
    Optional<Price> bagPrice = book.find(bag.item, "", 1);
    Optional<Price> bulkPrice = book.find(loads.item(), "", order);
    Optional<Price> delivery = book.find(DELIVERY, "", 1);
    Derived.Builder count =
        Derived.by("bags = order / bag, rounded up", BagOrBulk.SOURCE)
            .from("order", loads.order())
            .from("bag", bag.volume);
    Derived<Integer> bags = count.gives(WholePieces.of(order, bag.volume));
    List<String> missing =
        Stream.of(
                bagPrice.isEmpty() ? bag.item : "",
                bulkPrice.isEmpty() ? loads.item() : "",
                delivery.isEmpty() ? DELIVERY : "")
            .filter(s -> !s.isEmpty())
            .toList();
    if (!missing.isEmpty()) {
      return new BagChoice(
          loads.item(), loads.phase(), loads.order(), bags, Optional.empty(), missing);
    }
    double unitsInOrder = LocalRate.units(order, bulkPrice.get().unit());
    Offer offer =
        new Offer(
            bag.volume,
            bagPrice.get().perUnit().likely(),
            bulkPrice.get().perUnit().likely() / (order.cubicYards() / unitsInOrder),
            delivery.get().perUnit().likely());
    return new BagChoice(
        loads.item(), loads.phase(), loads.order(), bags, Optional.of(cost(loads, offer)), missing);
  }

  private static BagChoice.Cost cost(BulkLoads loads, Offer offer) {
    Volume order = loads.order().value();
    Derived<Money> inBags =
        Derived.by("up(order / bag) × price of a bag", BagOrBulk.SOURCE)
            .from("order", loads.order())
            .from("bag", offer.bag())
            .from("price of a bag", offer.bagPrice())
            .gives(Money.amount(BagOrBulk.bags(order, offer)));
    Derived<Money> inBulk =
        Derived.by(
                "loads × delivery of a load + order in cu yd × price of a cubic yard",
                BagOrBulk.SOURCE)
            .from("order", loads.order())
            .from("price of a cubic yard", offer.bulkPerYard())
            .from("delivery of a load", offer.delivery())
            .from("loads", loads.likely())
            .gives(Money.amount(BagOrBulk.bulk(order, offer, loads.likely().value())));
    return new BagChoice.Cost(inBags, inBulk, breakEven(offer));
  }

  private static Optional<Derived<Volume>> breakEven(Offer offer) {
    OptionalDouble yards = BagOrBulk.breakEvenYards(offer);
    if (yards.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Derived.by(
                "1 cu yd × delivery of a load / (price of a bag / (bag in cu yd) − price of a cubic"
                    + " yard)",
                BagOrBulk.SOURCE)
            .from("bag", offer.bag())
            .from("price of a bag", offer.bagPrice())
            .from("price of a cubic yard", offer.bulkPerYard())
            .from("delivery of a load", offer.delivery())
            .gives(Volume.cubicYards(yards.getAsDouble())));
  }
}
