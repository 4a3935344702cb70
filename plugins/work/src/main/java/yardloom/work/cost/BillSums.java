package yardloom.work.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.BillLine;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;

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
          .computeIfAbsent(line.group() + "|" + line.item() + "|" + kind, k -> new ArrayList<>())
          .add(line);
    }
    return items.values().stream().map(BillSums::sum).toList();
  }

  private static BillLine sum(List<BillLine> lines) {
    BillLine first = lines.get(0);
    if (lines.size() == 1) {
      return first;
    }
    Derived.Builder exactWhy = Derived.by("sum over beds", SUM);
    Derived.Builder orderWhy = Derived.by("sum over beds", SUM);
    Object exact = null;
    Object order = null;
    for (BillLine line : lines) {
      String where = line.element().map(Object::toString).orElse("plan");
      exactWhy.from(where, line.exact());
      orderWhy.from(where, line.order());
      exact = exact == null ? line.exact().value() : plus(exact, line.exact().value());
      order = order == null ? line.order().value() : plus(order, line.order().value());
    }
    return new BillLine(
        first.group(),
        first.phase(),
        first.item(),
        Optional.empty(),
        exactWhy.gives(exact),
        orderWhy.gives(order),
        first.allowance());
  }

  private static Object plus(Object a, Object b) {
    if (a instanceof Length x && b instanceof Length y) {
      return x.plus(y);
    }
    if (a instanceof Volume x && b instanceof Volume y) {
      return x.plus(y);
    }
    if (a instanceof Area x && b instanceof Area y) {
      return x.plus(y);
    }
    if (a instanceof Mass x && b instanceof Mass y) {
      return x.plus(y);
    }
    if (a instanceof Integer x && b instanceof Integer y) {
      return x + y;
    }
    return ((Number) a).doubleValue() + ((Number) b).doubleValue();
  }
}
