package yardloom.planting.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.spi.Catalogue;

/**
 * The list of plants for readers: whom a designer of sheet-mulched gardens meets first is in it.
 */
class CatalogueListTest {
  private static final TreeMap<String, Catalogue.Row> ROWS =
      PlantCatalogueList.plants().rows().stream()
          .collect(Collectors.toMap(Catalogue.Row::name, r -> r, (a, b) -> a, TreeMap::new));

  /** Names that the first gap list of the catalogue asked for, as botanists or gardeners say. */
  @ParameterizedTest
  @CsvSource({
    "'garlic,pea,Swiss chard,spinach,cabbage,sweet pepper,cucumber,sweet corn,pole bean,fava bean'",
    "'okra,cowpea,melon,basil,white clover,crimson clover,hairy vetch,winter rye,oats,buckwheat'",
    "'goumi,Siberian pea shrub,New Jersey tea,sterile comfrey,yarrow,borage,calendula,nasturtium'",
    "'bee balm,purple coneflower,butterfly milkweed,New England aster,showy goldenrod,lavender'",
    "'creeping thyme,woodland strawberry,lingonberry,evergreen huckleberry,salal,ostrich"
        + " fern,ramps'",
    "'tree collard,oregano,walking onion,groundnut,aronia,honeyberry,quince,jujube,prickly pear'",
    "'velvet mesquite,lemon,papaya,pigeon pea,moringa'",
  })
  void gaps_areFilled(String names) {
    for (String name : names.split(",")) {
      assertTrue(ROWS.containsKey(name), name);
    }
  }

  /** At least 150, most of them perennial, and enough for shade to choose from. */
  @Test
  void catalogue_isLargeAndMostlyPerennial() {
    assertTrue(ROWS.size() >= 150, "" + ROWS.size());
    long lasting =
        ROWS.values().stream().filter(r -> r.traits().get("life").equals("perennial")).count();
    assertTrue(lasting * 2 > ROWS.size(), lasting + " of " + ROWS.size());
    long shade =
        ROWS.values().stream()
            .filter(r -> r.traits().get("light").equals("part shade or shade"))
            .count();
    assertTrue(shade >= 10, "" + shade);
  }

  /** Rhubarb leaves harm children and pets; sea kale grows 30 in high: 2.5 ft, 0.76 m. */
  @Test
  void traits_areThoseOfTheTables() {
    assertTrue(ROWS.get("rhubarb").traits().get("harms").contains("children: leaves"));
    assertEquals("2.5 ft (0.8 m)", ROWS.get("sea kale").traits().get("height"));
    assertTrue(ROWS.get("fig").traits().get("care").contains("prune figs"));
    assertEquals("6 at least", ROWS.get("tomato").traits().get("hours"));
    // FAO-56, Tables 12 and 22: tomato 0.6, 1.15, 0.70 to 0.90, roots 0.7 to 1.5 m.
    assertEquals(
        "tomato, Kc 0.60, 1.15, 0.80, roots 2.3 to 4.9 ft (0.7 to 1.5 m)",
        ROWS.get("tomato").traits().get("crop"));
    assertEquals("as very tender annual", ROWS.get("tomato").traits().get("planted"));
    assertEquals("300 to 1200 h", ROWS.get("apple (dwarf)").traits().get("chill"));
    assertEquals("bears 3 in (76 mm)", ROWS.get("chives").traits().get("mulch"));
    assertEquals("partner, group apple", ROWS.get("apple (dwarf)").traits().get("pollination"));
    assertEquals(
        "days 0 to 25 from the last frost", ROWS.get("garden strawberry").traits().get("blooms"));
    assertEquals("days 0 to 56 from the last frost", ROWS.get("asparagus").traits().get("picked"));
    assertEquals(
        "5.0 to 8.0 lb (2.3 to 3.6 kg) a plant", ROWS.get("red currant").traits().get("yield"));
    assertTrue(ROWS.get("red raspberry").traits().get("heat").startsWith("suffers from "));
  }

  /** No row leaves out what all have: a filter that skips rows would mislead. */
  @Test
  void everyRow_hasTheSameTraits() {
    Set<String> all = new TreeSet<>();
    ROWS.values().forEach(r -> all.addAll(r.traits().keySet()));
    for (Catalogue.Row row : ROWS.values()) {
      assertEquals(all, new TreeSet<>(row.traits().keySet()), row.name());
      for (String must : new String[] {"family", "height", "spread", "spacing", "hours", "water"}) {
        assertTrue(!row.traits().get(must).isEmpty(), row.name() + " has no " + must);
      }
    }
  }
}
