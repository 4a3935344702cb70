package yardloom.planting.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;
import yardloom.planting.placing.formula.RingPlaces;

/** Rings of a guild by role, from the word to the printed table. */
class GuildByHandTest {
  private final PlantYard yard = PlantYard.us("2026-03-01");

  private BedScope withApple() {
    BedScope bed = yard.bed("g", 0, 0, 30, 30);
    yard.tree("apple", "apple (semi-dwarf)", 15, 15, 0.5);
    return bed;
  }

  /** As many as the polygon has sides, and one less where the spacing is a hair more. */
  @Test
  void count_isThatOfThePolygonWhoseSideIsTheSpacing() {
    for (DataRow row : DataTable.shipped(RingPlaces.class, "polygons.csv").rows()) {
      Length radius = Length.feet(row.number("radius_per_side"));
      int sides = (int) row.number("sides");
      assertEquals(sides, RingPlaces.count(radius, Length.feet(0.999)));
      assertEquals(sides - 1, RingPlaces.count(radius, Length.feet(1.001)));
    }
    assertEquals(2, RingPlaces.count(Length.feet(1), Length.feet(2)));
    assertEquals(1, RingPlaces.count(Length.feet(1), Length.feet(2.1)));
  }

  /** No two on a ring stand nearer than the spacing, and one more would. */
  @Property
  void ring_keepsItsSpacing(
      @ForAll @DoubleRange(min = 0.3, max = 9) double radiusM,
      @ForAll @DoubleRange(min = 0.1, max = 3) double spacingM) {
    Length radius = Length.metres(radiusM);
    int count = RingPlaces.count(radius, Length.metres(spacingM));
    if (count > 1) {
      List<Point> at = RingPlaces.round(Point.metres(2, 3), radius, count);
      assertTrue(at.get(0).distance(at.get(1)).metres() > spacingM - 1e-6);
    }
    List<Point> more = RingPlaces.round(Point.metres(2, 3), radius, count + 1);
    assertTrue(more.get(0).distance(more.get(1)).metres() < spacingM + 1e-6);
  }

  /**
   * Half spreads are 5.25, 16.5, 10.5 and 19.5 in. The first ring keeps a foot off the stem, the
   * next are at 12 + 5.25 + 16.5 = 33.75, + 16.5 + 10.5 = 60.75 and + 10.5 + 19.5 = 90.75 in. At
   * spacings of 10.5, 30, 18 and 33 in they hold π / asin(s / 2r) = 6.9, 6.8, 21.1 and 17.2.
   */
  @Test
  void rings_touch_fromTheStemOutward() {
    GuildWords.guild(
        withApple(),
        "apple",
        "woodland strawberry",
        "sterile comfrey",
        "yarrow",
        "wild indigo",
        null);
    assertEquals(
        List.of(
            "apple | ground cover | woodland strawberry | 1.0 | 6 | 6",
            "apple | mulch maker | sterile comfrey | 2.8 | 6 | 6",
            "apple | insect plant | yarrow | 5.1 | 21 | 21",
            "apple | nitrogen fixer | wild indigo | 7.6 | 17 | 17"),
        yard.printed("guilds"));
    List<String> rows = yard.printed("plant-schedule");
    assertTrue(rows.get(0).contains("yarrow | 21 |"), rows.get(0));
    assertTrue(rows.get(1).contains("wild indigo | 17 |"), rows.get(1));
    assertEquals(List.of(), yard.found("planting.stems"));
    assertEquals(List.of(), yard.found("planting.placed"));
  }

  /** A script may plant guilds of one bed in a loop, on one line: of the same kinds, too. */
  @Test
  void guildsOfOneLine_areEachRoundTheirOwnTree() {
    BedScope bed = yard.bed("g", 0, 0, 60, 30);
    yard.tree("apple", "apple (semi-dwarf)", 15, 15, 0.5);
    yard.tree("pear", "European pear", 45, 15, 0.5);
    GuildWords.guild(bed, "apple", null, null, "yarrow", null, Length.feet(4));
    GuildWords.guild(bed, "pear", null, null, "yarrow", null, Length.feet(5));
    List<String> rows = yard.printed("guilds");
    assertTrue(rows.get(0).startsWith("apple | insect plant | yarrow | 4.0"), rows.get(0));
    assertTrue(rows.get(1).startsWith("pear | insect plant | yarrow | 5.0"), rows.get(1));
  }

  /** From 4 ft: π / asin(18 / 96) = 16.7. */
  @Test
  void firstRing_isWhereThePlanSays() {
    GuildWords.guild(withApple(), "apple", null, null, "yarrow", null, Length.feet(4));
    assertTrue(yard.printed("guilds").get(0).contains("yarrow | 4.0"));
    assertTrue(yard.printed("guilds").get(0).endsWith("| 16 | 16"));
  }

  @Test
  void words_refuseAWrongRole_andNoRing() {
    BedScope bed = withApple();
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> GuildWords.guild(bed, "apple", null, null, null, "yarrow", null));
    assertTrue(e.getMessage().contains("'yarrow' is no nitrogen fixer"), e.getMessage());
    assertTrue(e.getMessage().contains("'goumi'"), e.getMessage());
    assertThrows(
        PlanException.class, () -> GuildWords.guild(bed, "apple", null, null, null, null, null));
    assertThrows(
        PlanException.class,
        () -> GuildWords.guild(bed, "apple", null, null, "yarrow", null, Length.feet(61)));
  }
}
