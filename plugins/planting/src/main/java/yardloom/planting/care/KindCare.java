package yardloom.planting.care;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.planting.catalogue.Plant;

/** What is done for a kind, wherever it grows, by the names of the acts of care. */
public final class KindCare {
  private KindCare() {}

  /** In the order of the data; empty for annuals that are sown in drills. */
  public static List<String> of(Plant plant) {
    Set<String> groups = CareGroups.of(plant);
    return CareRow.SHIPPED.stream()
        .filter(r -> Stream.of(r.who().split("; ")).anyMatch(groups::contains))
        .map(r -> r.task().what().toLowerCase(Locale.ROOT))
        .toList();
  }
}
