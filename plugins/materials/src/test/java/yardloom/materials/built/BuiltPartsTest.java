package yardloom.materials.built;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.built.Flight;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.materials.built.formula.FenceParts;
import yardloom.materials.built.formula.FenceParts.Opening;
import yardloom.materials.built.formula.FenceParts.Runs;
import yardloom.materials.built.formula.WallParts;

/** Parts of fences, walls and steps against published examples, and what always holds. */
class BuiltPartsTest {
  private static Line straight(double feet) {
    return Line.between(
        new Point(Length.ZERO, Length.ZERO), new Point(Length.feet(feet), Length.ZERO));
  }

  private static double ours(DataRow row) {
    double a = row.number("a");
    double b = row.maybe("b").orElse(0);
    double c = row.maybe("c").orElse(0);
    String part = row.text("part");
    return switch (part.substring(0, part.indexOf(':'))) {
      case "fence posts" -> FenceParts.runs(straight(a), Length.feet(b), List.of()).posts().size();
      case "fence bays" -> FenceParts.runs(straight(a), Length.feet(b), List.of()).bays();
      case "rails of a bay" -> FenceParts.rails(Length.feet(a));
      case "boards" -> FenceParts.boards(Length.feet(a), c, Length.inches(b));
      case "buried ft" -> FenceParts.buried(Length.feet(a)).feet();
      case "concrete cu ft" ->
          FenceParts.concrete(Length.inches(a), Length.inches(b), Length.inches(c)).cubicFeet();
      case "courses" -> WallParts.courses(Length.inches(a), Length.inches(b));
      case "along" -> WallParts.along(Length.inches(a), Length.inches(b));
      case "drain cu yd" -> WallParts.drain(Length.feet(a), Length.feet(b)).cubicYards();
      case "risers" ->
          new Flight(straight(9), Length.millimetres(a), Length.feet(4), Length.millimetres(b))
              .risers();
      default -> throw new IllegalArgumentException(part);
    };
  }

  @Test
  void parts_areThePublishedOnes() {
    for (DataRow row : DataTable.shipped(BuiltPartsTest.class, "published-parts.csv").rows()) {
      assertEquals(row.number("want"), ours(row), row.number("tolerance") + 1e-9, row.text("part"));
    }
  }

  /** 20 ft with a gate of 4 ft whose middle is at 9 ft: runs of 7 and 9 ft, so 2 + 3 posts. */
  @Test
  void gate_hasAPostAtEachSide() {
    Runs runs =
        FenceParts.runs(
            straight(20), Length.feet(8), List.of(new Opening(Length.feet(7), Length.feet(11))));
    assertEquals(5, runs.posts().size());
    assertEquals(3, runs.bays());
    assertEquals(16, runs.length().feet(), 1e-9);
  }

  /** Against a wall at its end the gate still hangs on posts of its own. */
  @Test
  void gateAtTheEnd_standsOnAPost() {
    Runs runs =
        FenceParts.runs(
            straight(20), Length.feet(8), List.of(new Opening(Length.feet(15), Length.feet(20))));
    assertEquals(List.of(0.0, 7.5, 15.0, 20.0), xs(runs));
    assertEquals(2, runs.bays());
  }

  private static List<Double> xs(Runs runs) {
    return runs.posts().stream().map(p -> Math.round(p.x().feet() * 1e6) / 1e6).toList();
  }

  /**
   * Whatever the gates, runs and openings make up the line, no bay is wider than the spacing, and a
   * gate takes at most two posts more.
   */
  @Property(tries = 200)
  void runs_makeUpTheLine(
      @ForAll @DoubleRange(min = 30, max = 200) double feet,
      @ForAll @DoubleRange(min = 4, max = 10) double spacing,
      @ForAll @IntRange(min = 0, max = 3) int gates) {
    List<Opening> openings = new ArrayList<>();
    for (int i = 0; i < gates; i++) {
      double from = feet * (i + 0.3) / 3;
      openings.add(new Opening(Length.feet(from), Length.feet(from + 3.5)));
    }
    Runs runs = FenceParts.runs(straight(feet), Length.feet(spacing), openings);
    assertEquals(feet, runs.length().feet() + 3.5 * gates, 1e-6);
    assertTrue(runs.bays() * spacing >= runs.length().feet() - 1e-6);
    assertEquals(runs.bays() + gates + 1, runs.posts().size());
    int plain = FenceParts.runs(straight(feet), Length.feet(spacing), List.of()).posts().size();
    assertTrue(runs.posts().size() <= plain + 2 * gates);
  }

  /**
   * Feet of a flight up a line to the north of 6 ft: its edges lie across, the last at the head.
   */
  @Test
  void nosings_lieAcross() {
    Point foot = new Point(Length.feet(10), Length.feet(20));
    Line line = Line.between(foot, new Point(Length.feet(10), Length.feet(26)));
    Flight flight = new Flight(line, Length.inches(26), Length.feet(5), Length.inches(7));
    assertEquals(4, flight.risers());
    assertEquals(6.5, flight.step().inches(), 1e-9);
    assertEquals(24, flight.tread().inches(), 1e-9);
    Line last = flight.nosings().get(3);
    assertEquals(26, last.start().y().feet(), 1e-6);
    assertEquals(5, last.length().feet(), 1e-6);
  }
}
