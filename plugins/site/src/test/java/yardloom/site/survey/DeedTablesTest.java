package yardloom.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.SitePlugin;

/** Deeds and ties as they are printed, with the sums by hand. */
class DeedTablesTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 5, 1));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private Outcome study() {
    return new Study(PluginLoader.of(List.of(new SitePlugin()))).of(draft.freeze());
  }

  private Table table(String id) {
    return study().tables().stream().filter(t -> t.id().equals(id)).findAny().orElseThrow();
  }

  private static String row(Table table, int row) {
    TableFormat format = new TableFormat(UnitSystem.US, "$");
    return IntStream.range(0, table.columns().size())
        .mapToObj(i -> format.text(table.columns().get(i), table.rows().get(row).get(i)))
        .collect(Collectors.joining(" | "));
  }

  private List<String> findings(String rule) {
    return study().findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(f -> f.severity() + " " + f.text())
        .toList();
  }

  private Deed deed(Consumer<DeedScope> calls) {
    return DeedWords.deed(in, "Lot 7", null, null, null, null, null, null, calls);
  }

  private void refused(ProblemCode code, String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertEquals(code, refused.problems().get(0).code());
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  /** A quarter circle of 20 ft: chord 20 √2 = 28.3 ft, arc 10 π = 31.42 ft. */
  private void rounded(Length radius, Length length) {
    deed(
        s -> {
          DeedWords.course(s, "North", ft(100), "west");
          DeedWords.course(s, "East", ft(80), "north");
          DeedWords.course(s.at(new SourceRef("t.groovy", 9, 1)), "South", ft(80), "east");
          DeedWords.curve(
              s, radius, "90-00-00", length, null, "S 45 W", null, "right", null, "corner");
          DeedWords.course(s, "West", ft(60), "front");
        });
  }

  @Test
  void curve_isPrintedWithRadiusAngleAndArc() {
    rounded(ft(20), null);
    Table table = table("deed");
    assertEquals(
        "corner | S 45°00'00\" W | 28.3 | R 20.00 ft, Δ 90°00'00\", arc 31.42 ft, right | -20.0 | -20.0"
            + " | -20.0 | -20.0",
        row(table, 3));
    assertEquals("east | S 00°00'00\" E | 80.0 |  | -80.0 | 0.0 | -80.0 | 0.0", row(table, 2));
    // 100 × 80 less the corner that the curve cuts off: 8000 − 20² (1 − π/4) = 7914.16.
    assertEquals(
        List.of(
            "Lot 7: true north, turned by 00°00'00\"; misclosure 0.00 ft; area 7914.2 sq ft as"
                + " written, 7914.2 sq ft adjusted. No survey."),
        table.notes());
    assertEquals(List.of(), findings("site.deed-curve"));
    assertEquals(List.of(), findings("site.deed-misclosure"));
    assertEquals(List.of(), findings("site.deed-unchecked"));
  }

  /** An arc of 40 ft where 31.42 ft belong to radius and angle. */
  @Test
  void curve_thatContradictsItself_isTold() {
    rounded(ft(20), ft(40));
    List<String> found = findings("site.deed-curve");
    assertEquals(1, found.size());
    assertTrue(
        found.get(0).startsWith("WARNING the curve 'corner' contradicts itself: "), found.get(0));
  }

  /** 100 ft north and 100 ft east: half of a square, 5,000 sq ft. */
  @Test
  void lastCall_workedOut_checksNothing() {
    Deed deed =
        deed(
            s -> {
              DeedWords.course(s, "North", ft(100), null);
              DeedWords.course(s, "East", ft(100), null);
              DeedWords.toStart(s, "back");
            });
    assertEquals(3, deed.calls().size());
    assertEquals(
        List.of("NOTE the last call was worked out, so the description does not check itself"),
        findings("site.deed-unchecked"));
    Table table = table("deed");
    assertEquals(
        "back | S 45°00'00\" W | 141.4 |  | -100.0 | -100.0 | -100.0 | -100.0", row(table, 2));
    assertEquals(
        "Lot 7: true north, turned by 00°00'00\"; unchecked, the last call was worked out; area"
            + " 5000.0 sq ft as written, 5000.0 sq ft adjusted. No survey.",
        table.notes().get(0));
  }

  /** It ends 0.3 ft short of 400 ft: 1 in 1,332; by the compass rule a quarter to each side. */
  @Test
  void misclosure_isSharedOut() {
    deed(
        s -> {
          DeedWords.course(s, "North", ft(100), null);
          DeedWords.course(s, "East", ft(100), null);
          DeedWords.course(s, "South", ft(100), null);
          DeedWords.course(s, "West", ft(99.7), null);
        });
    assertTrue(
        table("deed").notes().get(0).contains("misclosure 0.30 ft (1 : 1332)"), "399.7 / 0.3");
    assertTrue(
        findings("site.deed-misclosure")
            .get(0)
            .startsWith("WARNING the description fails to close by 0.30 ft, 1 : 1332; area"));
    // East adjusted: 100 − 0.3 · 100 / 399.7 = 99.92.
    assertEquals(
        100 - 0.3 * 100 / 399.7,
        ((Length) table("deed").rows().get(1).get(7).value().orElseThrow()).feet(),
        1e-9);
  }

  /** 1 in 5,000 is close enough: 0.08 ft in 400 ft are, 0.0801 ft are not. */
  @ParameterizedTest
  @CsvSource({"99.9201, 0", "99.9198, 1"})
  void misclosure_ofOneInFiveThousand_isAllowed(double west, int findings) {
    deed(
        s -> {
          DeedWords.course(s, "North", ft(100), null);
          DeedWords.course(s, "East", ft(100), null);
          DeedWords.course(s, "South", ft(100), null);
          DeedWords.course(s, "West", ft(west), null);
        });
    assertEquals(findings, findings("site.deed-misclosure").size());
  }

  @Test
  void norths_haveTheirOwnAngle() {
    Deed grid =
        DeedWords.deed(
            in,
            "G",
            null,
            "grid",
            null,
            Angle.degrees(3),
            null,
            null,
            s -> {
              DeedWords.course(s, "North", ft(100), null);
              DeedWords.course(s, "East", ft(100), null);
              DeedWords.toStart(s, null);
            });
    assertEquals(3, grid.calls().get(0).chord().azimuth().degrees(), 1e-9);
    refused(
        ProblemCode.CONTRADICTION,
        "`declination:` goes with `north: 'magnetic'`; true was given",
        () -> DeedWords.deed(in, "L", null, null, Angle.degrees(1), null, null, null, null));
    refused(
        ProblemCode.CONTRADICTION,
        "`convergence:` goes with `north: 'grid'`; true was given",
        () -> DeedWords.deed(in, "L", null, null, null, Angle.degrees(1), null, null, null));
    refused(
        ProblemCode.CONTRADICTION,
        "`convergence:` goes with `north: 'grid'`; magnetic was given",
        () ->
            DeedWords.deed(
                in, "L", null, "magnetic", Angle.degrees(2), Angle.degrees(1), null, null, null));
  }

  /** The point (30, 40) ft is 50 ft from the first stake; the others by Pythagoras too. */
  @ParameterizedTest
  @CsvSource({
    "2, 'corner: two tapes, unchecked.'",
    "3, 'corner: 1 tape more than needed, standard error 0.00 ft by 0.00 ft.'",
    "4, 'corner: 2 tapes more than needed, standard error 0.00 ft by 0.00 ft.'"
  })
  void ties_sayHowFarTheyAreChecked(int tapes, String note) {
    Point truth = new Point(ft(30), ft(40));
    double[][] from = {{0, 0}, {60, 0}, {60, 80}, {0, 80}};
    SurveyWords.tied(
        in,
        "corner",
        truth,
        s -> {
          for (int i = 0; i < tapes; i++) {
            SurveyWords.tape(s, new Point(ft(from[i][0]), ft(from[i][1])), ft(50), "S" + i, null);
          }
        });
    Table ties = table("ties");
    assertEquals(tapes, ties.rows().size());
    assertEquals(List.of(note), ties.notes());
    assertTrue(row(ties, 0).startsWith("corner | S0 | 50.0 | "), row(ties, 0));
  }
}
