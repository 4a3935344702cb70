package yardloom.work.visit;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.TimeSpan;
import yardloom.work.cost.CostEstimate;
import yardloom.work.labour.TaskLoad;

/** Shares out the rows of the cost table, each by how much of its amount a visit takes. */
final class VisitCosts {
  private static final Source SHARE = Source.plan("rows of the cost table, shared out by amount");
  private static final String DELIVERY = "delivery of ";
  private static final String LABOUR = "labour";

  private final Optional<CostEstimate> cost;
  private final List<BillLine> bill;
  private final List<BulkLoads> loads;
  private final double allHours;

  VisitCosts(Optional<CostEstimate> cost, Facts in) {
    this.cost = cost;
    this.bill = in.all(YardFacts.BILL);
    this.loads = in.all(YardFacts.LOADS);
    this.allHours = TaskLoad.sum(in.all(TaskLoad.FACT)).likely().hours();
  }

  /** The likely cost of a visit; empty where nothing is priced. */
  Optional<Derived<Money>> of(
      Derived<TimeSpan> hours, List<BillLine> ownLines, List<BulkLoads> ownLoads) {
    if (cost.isEmpty()) {
      return Optional.empty();
    }
    Derived.Builder why = Derived.by("sum over rows of cost × share", SHARE);
    double sum = 0;
    for (CostEstimate.Row row : cost.get().rows()) {
      double share = share(row.item(), hours.value().hours(), ownLines, ownLoads);
      if (share > 0) {
        why.from("cost of " + row.item(), row.likely()).from("share of " + row.item(), share);
        sum += row.likely().value().amount() * share;
      }
    }
    return Optional.of(why.gives(Money.amount(sum)));
  }

  private double share(
      String item, double hours, List<BillLine> ownLines, List<BulkLoads> ownLoads) {
    if (item.equals(LABOUR)) {
      return hours / allHours;
    }
    if (item.startsWith(DELIVERY)) {
      Predicate<BulkLoads> isIt = l -> l.item().equals(item.substring(DELIVERY.length()));
      return trucks(ownLoads, isIt) / trucks(loads, isIt);
    }
    List<BillLine> all = bill.stream().filter(l -> l.item().equals(item)).toList();
    // What is sold by the piece here and by measure there has no common amount.
    boolean isAlike = all.stream().map(l -> l.order().value().getClass()).distinct().count() == 1;
    return amount(ownLines.stream().filter(l -> l.item().equals(item)).toList(), isAlike)
        / amount(all, isAlike);
  }

  private static double trucks(List<BulkLoads> some, Predicate<BulkLoads> isIt) {
    return some.stream().filter(isIt).mapToInt(l -> l.likely().value()).sum();
  }

  private static double amount(List<BillLine> lines, boolean isAlike) {
    return lines.stream().mapToDouble(l -> isAlike ? amount(l) : 1).sum();
  }

  private static double amount(BillLine line) {
    return line.order().value() instanceof Quantity<?> q
        ? q.si()
        : ((Number) line.order().value()).doubleValue();
  }
}
