package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.study.Outcome;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.InkAudit;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** Plans that are hard to letter, measured as the demos are; the long ones run behind -Pheavy. */
class HardPlansTest {
  @TempDir private Path dir;

  /** What is hard about each. */
  enum Hard {
    NARROW_BEDS_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
        building 'House', rect(5.ft, 2.ft, 30.ft, 12.ft), eaves: 10.ft
        for (i in 1..18) bed "Row $i", rect(1.ft + 3.ft * i, 17.ft, 14.inch, 30.ft)
        """),
    NARROW_BEDS_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(14.m, 0.m), point(14.m, 18.m), point(0.m, 18.m)])
        building 'House', rect(2.m, 1.m, 8.m, 4.m), eaves: 3.m
        for (i in 1..14) bed "Strip $i", rect(1.m, 5.2.m + 0.85.m * i, 11.m, 40.cm)
        """),
    CROWDED_BACK_YARD_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(34.ft, 0.ft), point(34.ft, 62.ft), point(0.ft, 62.ft)])
        building 'House', rect(4.ft, 4.ft, 25.ft, 20.ft), eaves: 10.ft
        building 'Shed', rect(26.ft, 52.ft, 7.ft, 8.ft), eaves: 7.ft
        fence 'Rear fence', line([point(0.ft, 61.ft), point(25.ft, 61.ft)]), height: 6.ft
        tap 'Wall tap', point(12.ft, 24.ft), source: 'mains'
        utility 'Sewer', line([point(31.ft, 0.ft), point(31.ft, 50.ft)]), carries: 'sewer', clearance: 1.ft
        path 'Main path', line([point(16.ft, 25.ft), point(16.ft, 60.ft)]), width: 2.ft
        path 'Shed path', line([point(17.ft, 45.ft), point(30.ft, 45.ft)]), width: 2.ft
        for (i in 0..5) bed "Left ${i + 1}", rect(2.ft, 27.ft + 5.ft * i, 12.ft, 3.ft)
        for (i in 0..2) bed "Right ${i + 1}", rect(18.ft, 27.ft + 5.ft * i, 11.ft, 3.ft)
        tree 'Pear', point(20.ft, 50.ft), crown: 9.ft, height: 12.ft, standing: false
        tree 'Plum', point(20.ft, 57.ft), crown: 8.ft, height: 11.ft, standing: false
        """),
    CROWDED_BACK_YARD_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(9.m, 0.m), point(9.m, 17.m), point(0.m, 17.m)])
        building 'House', rect(1.m, 1.m, 7.m, 5.m), eaves: 3.m
        tap 'Wall tap', point(3.m, 6.m), source: 'mains'
        path 'Main path', line([point(4.5.m, 6.3.m), point(4.5.m, 16.m)]), width: 60.cm
        for (i in 0..6) bed "West ${i + 1}", rect(0.5.m, 6.8.m + 1.4.m * i, 3.4.m, 80.cm)
        for (i in 0..6) bed "East ${i + 1}", rect(5.1.m, 6.8.m + 1.4.m * i, 3.3.m, 90.cm)
        """),
    LONG_NAMES_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 60.ft), point(0.ft, 60.ft)])
        building 'The house that the grandparents of the household once built', rect(20.ft, 4.ft, 30.ft, 18.ft), eaves: 10.ft
        for (i in 1..9) bed "Bed $i of early and late strawberries by the kitchen window", rect(7.ft * i - 4.ft, 26.ft, 4.ft, 30.ft)
        """),
    LONG_NAMES_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(16.m, 0.m), point(16.m, 16.m), point(0.m, 16.m)])
        for (i in 1..7) bed "Stachelbeerenundjohannisbeerenhochstämmchenbeet$i", rect(1.m, 2.m * i - 1.m, 13.m, 1.1.m)
        """),
    DEEP_LOT_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(5.m, 0.m), point(5.m, 52.m), point(0.m, 52.m)])
        building 'House', rect(0.m, 8.m, 5.m, 9.m), eaves: 3.m
        path 'Long path', line([point(4.4.m, 18.m), point(4.4.m, 51.m)]), width: 90.cm
        for (i in 0..9) bed "Bed ${i + 1}", rect(0.4.m, 18.5.m + 3.2.m * i, 3.2.m, 2.4.m)
        """),
    WIDE_LOT_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(210.ft, 0.ft), point(210.ft, 38.ft), point(0.ft, 38.ft)])
        building 'House', rect(10.ft, 6.ft, 40.ft, 24.ft), eaves: 10.ft
        for (i in 0..11) bed "Bed ${i + 1}", rect(60.ft + 12.ft * i, 5.ft, 9.ft, 28.ft)
        """),
    MANY_TREES_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 90.ft), point(0.ft, 90.ft)])
        for (i in 0..5) for (j in 0..5) tree "Tree ${6 * i + j + 1}", point(10.ft + 14.ft * i, 10.ft + 14.ft * j), crown: 11.ft, height: 12.ft, standing: false
        """),
    CROOKED_LOT_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(19.m, 3.m), point(23.m, 17.m), point(9.m, 24.m), point(-3.m, 12.m)])
        building 'House', rect(4.m, 4.m, 8.m, 6.m), eaves: 3.m
        for (i in 0..4) bed "Round ${i + 1}", circle(point(6.m + 2.6.m * i, 14.m), 1.m)
        path 'Bent path', line([point(2.m, 12.m), point(8.m, 11.5.m), point(18.m, 12.m)]), width: 80.cm
        """),
    MANY_BEDS_US(
        true,
        """
        lot([point(0.ft, 0.ft), point(260.ft, 0.ft), point(260.ft, 180.ft), point(0.ft, 180.ft)])
        for (i in 0..19) for (j in 0..14) bed "Plot ${15 * i + j + 1}", rect(6.ft + 12.5.ft * i, 6.ft + 11.5.ft * j, 8.ft, 7.ft)
        """),
    MANY_BEDS_METRIC(
        false,
        """
        lot([point(0.m, 0.m), point(64.m, 0.m), point(64.m, 50.m), point(0.m, 50.m)])
        for (i in 0..14) for (j in 0..19) bed "P${20 * i + j + 1}", rect(1.m + 4.m * i, 1.m + 2.4.m * j, 3.m, 1.5.m)
        """);

    private final boolean us;
    private final String statements;

    Hard(boolean us, String statements) {
      this.us = us;
      this.statements = statements;
    }

    String script() {
      return "plan 'Hard', units: '"
          + (us ? "us" : "metric")
          + "'\n"
          + statements
          + "sheetMulch { chips perennial: 3.inch, path: 4.inch }\n"
          + "work crew: 2, hoursPerDay: 7, start: '2026-09-14'\n";
    }
  }

  @ParameterizedTest
  @EnumSource(value = Hard.class, mode = EnumSource.Mode.MATCH_NONE, names = "MANY_.*")
  void hardPlan_isLetteredAsDemosAre(Hard hard) throws IOException {
    measure(hard);
  }

  /** Half a minute each. */
  @Tag("heavy")
  @ParameterizedTest
  @EnumSource(value = Hard.class, mode = EnumSource.Mode.MATCH_ANY, names = "MANY_.*")
  void longHardPlan_isLetteredAsDemosAre(Hard hard) throws IOException {
    measure(hard);
  }

  private void measure(Hard hard) throws IOException {
    Path file = Files.writeString(dir.resolve("hard.groovy"), hard.script());
    Toolkit toolkit = Toolkit.load();
    Outcome outcome = toolkit.study(toolkit.read(file, Map.of()));
    List<ComposedSheet> sheets =
        SheetSet.of(outcome, Paper.usual(outcome.plan().info().units()), List.of(), Hands.ONE);
    assertEquals(Set.of(), PointNumbers.missing(sheets));
    for (ComposedSheet sheet : sheets) {
      assertEquals(List.of(), InkAudit.problems(sheet, FontWidths.shipped()), sheet.id());
      assertEquals(List.of(), InkAudit.textsOnMeasures(sheet, FontWidths.shipped()), sheet.id());
      boolean large = sheet.paper().widthMm() * sheet.paper().heightMm() > 300 * 300;
      for (Ink.Text text : InkAudit.texts(sheet)) {
        assertTrue(text.heightMm() >= (large ? 2.4 : 2.0), sheet.id() + ": " + text);
      }
      List<Ink.Track> leaders = new ArrayList<>();
      sheet.inks().forEach(ink -> leaders(ink, false, leaders));
      assertEquals(0, crossings(leaders), sheet.id() + ": of " + leaders.size() + " leaders");
    }
  }

  private static void leaders(Ink ink, boolean within, List<Ink.Track> found) {
    if (ink instanceof Ink.Group group) {
      boolean inside = within || group.name().equals("leaders");
      group.inks().forEach(i -> leaders(i, inside, found));
    } else if (within && ink instanceof Ink.Path path) {
      found.addAll(path.tracks());
    }
  }

  private static int crossings(List<Ink.Track> leaders) {
    int crossings = 0;
    for (int i = 0; i < leaders.size(); i++) {
      List<Xy> a = leaders.get(i).points();
      for (int j = 0; j < i; j++) {
        List<Xy> b = leaders.get(j).points();
        crossings += Quad.isCrossing(a.get(0), a.get(1), b.get(0), b.get(1)) ? 1 : 0;
      }
    }
    return crossings;
  }
}
