package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** Acts of care and their pace, against published rates; no kind of the catalogue goes without. */
class CareDataTest {
  /** Ways in which an act is for other things than plants. */
  private static final Set<String> GROUND =
      Set.of("planted", "annual bed", "deep mulch", "path", "mulched", "drip", "hedge");

  /** Groups that care gives by how a plant stands, not by its kind. */
  private static final Set<String> BY_PLACE = Set.of("trained", "dripped tree");

  static Stream<DataRow> published() {
    return DataTable.shipped(CareDataTest.class, "published-pace.csv").rows().stream();
  }

  private static CareRow row(String what) {
    return CareRow.SHIPPED.stream()
        .filter(r -> r.task().what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("published")
  void minutes_lieWithinThePublishedOnes(DataRow row) {
    double minutes = row(row.text("what")).pace().minutes();
    assertTrue(
        minutes >= row.number("low_min") && minutes <= row.number("high_min"),
        row.text("what") + ": " + minutes);
  }

  /** Nothing is looked after by weeding alone: whatever stays has acts of its own. */
  @Test
  void everyLastingKind_hasCareOfItsOwn() {
    Set<String> served = new HashSet<>();
    CareRow.SHIPPED.forEach(r -> served.addAll(List.of(r.who().split("; "))));
    Set<String> without = new TreeSet<>();
    for (Plant plant : PlantCatalogue.shipped().all()) {
      Set<String> groups = new HashSet<>(CareGroups.of(plant));
      groups.retainAll(served);
      groups.remove("tender woody");
      groups.remove("tender tree");
      groups.remove("gnawed bark");
      if (!plant.growth().season().isAnnual() && groups.isEmpty()) {
        without.add(plant.name());
      }
    }
    assertEquals(Set.of(), without);
  }

  /** A group that no kind falls into is a misspelt one. */
  @Test
  void everyAct_isForSomeKindOrGround() {
    Set<String> groups = new HashSet<>(GROUND);
    groups.addAll(BY_PLACE);
    PlantCatalogue.shipped().all().forEach(p -> groups.addAll(CareGroups.of(p)));
    for (CareRow row : CareRow.SHIPPED) {
      assertTrue(groups.containsAll(List.of(row.who().split("; "))), row.task().what());
    }
  }

  /** A longer name finds no room on the chart and is left out: 27 letters do. */
  @Test
  void names_findRoomOnTheChart() {
    for (CareRow row : CareRow.SHIPPED) {
      assertTrue(row.task().what().length() <= 32, row.task().what());
    }
  }

  /** Ids of the calendar are made of the names. */
  @Test
  void names_areGivenOnce() {
    List<String> names = new ArrayList<>();
    CareRow.SHIPPED.forEach(r -> names.add(CareYears.slug(r.task().what())));
    assertEquals(names.size(), new HashSet<>(names).size());
    assertFalse(names.isEmpty());
  }
}
