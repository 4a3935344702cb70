package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.plan.Plan;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.BlankShare;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.InkAudit;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;

/**
 * What a drafting examiner measures, over every sheet of every demo.
 *
 * <p>References: [1] Machine Drawing, section 2.5, Table 2.6: capitals of 2.5 mm are the least of
 * the lettering series; the sheets' 2.4 mm are its shipped font's nearest, and dimensions have 2.5
 * mm.
 */
class SheetMeasuresTest {
  private static final double MOST_BLANK = 0.45;

  /**
   * A lot of 7 m by 40 m covers a tenth of its sheet at the largest usual scale, and has four beds:
   * these two stay emptier than they should be.
   */
  private static final Set<String> NARROW =
      Set.of("san-francisco-slope grading", "san-francisco-slope planting");

  /** Drawn once for all measures. */
  private static final Map<String, List<ComposedSheet>> SETS = new HashMap<>();

  private static List<ComposedSheet> set(String demo) {
    return SETS.computeIfAbsent(
        demo,
        d -> {
          Toolkit toolkit = Toolkit.load();
          Plan plan = toolkit.read(Samples.FOLDER.resolve(d + ".groovy"), Map.of());
          return SheetSet.of(toolkit.study(plan), Paper.usual(plan.info().units()), List.of());
        });
  }

  private static boolean isLarge(ComposedSheet sheet) {
    return sheet.paper().widthMm() * sheet.paper().heightMm() > 300 * 300;
  }

  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyLargeSheet_isAtMostNearlyHalfBlank(String demo) {
    List<String> blank = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      double share = BlankShare.of(sheet);
      if (isLarge(sheet) && share > MOST_BLANK && !NARROW.contains(demo + " " + sheet.id())) {
        blank.add(sheet.id() + " " + share);
      }
    }
    assertEquals(List.of(), blank);
  }

  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everySheet_noTwoTextsOverlap_nothingLeavesTheFrame(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      assertEquals(List.of(), InkAudit.problems(sheet, FontWidths.shipped()), sheet.id());
    }
  }

  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everySheet_letteringIsHighEnough(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      double least = isLarge(sheet) ? 2.4 : 2.0;
      for (Ink.Text text : InkAudit.texts(sheet)) {
        assertTrue(text.heightMm() >= least, sheet.id() + ": " + text);
      }
    }
  }

  /** Every legend entry of a map is drawn on it: its style stands outside the legend too. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyLegend_explainsOnlyWhatIsDrawn(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      Set<String> drawn = new TreeSet<>();
      Set<String> explained = new TreeSet<>();
      for (Ink ink : sheet.inks()) {
        if (ink instanceof Ink.Group group && group.name().equals("site-plan")) {
          styles(group, drawn);
        } else if (ink instanceof Ink.Group group && group.name().equals("legend")) {
          styles(group, explained);
        }
      }
      if (drawn.isEmpty()) {
        // A booklet's legend may run on to the page behind its map.
        continue;
      }
      explained.remove("block-rule");
      Set<String> idle = new TreeSet<>();
      explained.forEach(style -> idle.add(style.replaceAll("-sample$", "")));
      idle.removeAll(drawn);
      assertEquals(Set.of(), idle, sheet.id());
    }
  }

  private static void styles(Ink ink, Set<String> names) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> styles(i, names));
    } else if (ink instanceof Ink.Path path) {
      names.add(path.style().name());
    } else if (ink instanceof Ink.Circle circle) {
      names.add(circle.style().name());
    }
  }
}
