package yardloom.work.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import yardloom.facts.BillLine;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Quantity;

/** Lines of the bill added up by item: what is bought together has one price. */
public final class BillSums {
  private static final Source SUM = Source.plan("sum over the beds of the plan");

  private BillSums() {}

  /** One line for each item, in the order of their first lines. */
  public static List<BillLine> byItem(List<BillLine> bill) {
    Map<String, List<BillLine>> items = new LinkedHashMap<>();
    for (BillLine line : bill) {
      String kind = line.order().value().getClass().getSimpleName();
      items
          .computeIfAbsent(
              line.group() + "|" + line.item() + "|" + kind + "|" + line.on(),
              k -> new ArrayList<>())
          .add(line);
    }
    return items.values().stream().map(BillSums::sum).toList();
  }

  private static BillLine sum(List<BillLine> lines) {
    BillLine first = lines.get(0);
    if (lines.size() == 1) {
      return first;
    }
    return new BillLine(
        first.group(),
        first.phase(),
        first.item(),
        Optional.empty(),
        first.plant(),
        sum(lines, BillLine::exact),
        sum(lines, BillLine::order),
        first.allowance(),
        first.stock(),
        first.on());
  }

  private static Derived<?> sum(List<BillLine> lines, Function<BillLine, Derived<?>> of) {
    Derived.Builder why = Derived.by("sum over beds", SUM);
    for (BillLine line : lines) {
      why.from(line.element().map(Object::toString).orElse(line.phase().title()), of.apply(line));
    }
    List<?> amounts = lines.stream().map(line -> of.apply(line).value()).toList();
    return amounts.get(0) instanceof Quantity<?> first
        ? why.gives(sum(first, amounts))
        : why.gives(amounts.stream().mapToInt(a -> (Integer) a).sum());
  }

  /** Lines are grouped by the kind of their amounts, so that all are of the first one's kind. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Q sum(Quantity<Q> first, List<?> amounts) {
    return amounts.stream().map(a -> (Q) a).reduce(Quantity::plus).orElseThrow();
  }
}
