package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Element;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.output.SheetSet;
import yardloom.sheet.compose.BlankShare;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.InkAudit;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * What a drafting examiner measures, over every sheet of every demo.
 *
 * <p>References: [1] Machine Drawing, section 2.5, Table 2.6: capitals of 2.5 mm are the least of
 * the lettering series; the sheets' 2.4 mm are its shipped font's nearest, and dimensions have 2.5
 * mm.
 */
class SheetMeasuresTest {
  private static final double MOST_BLANK = 0.45;

  private static final Pattern FEET =
      Pattern.compile(
          "[0-9½¼¾] ?(ft|gph|gpm|psi|lb|gal|yd|°F|cu yd|sq ft|miles?)\\b|\\b(feet|inch|inches)\\b");

  private static final Pattern METRIC =
      Pattern.compile("[0-9] ?(m|cm|mm|km|L|L/h|kPa|kg|°C|m²|m³|ha)(?![\\w'])");

  /** A leader ends at the room that a text is given, a little more than its letters. */
  private static final double TOUCHING_MM = 1.5;

  /** The same for a name of several lines. */
  private static final double LINES_MM = 12;

  /** Parts of symbols that a legend shows whole, and the ground that a lot line runs about. */
  private static final Set<String> PARTS =
      Set.of(
          "lot",
          "trunk",
          "fence-mark-existing",
          "trellis-post",
          "swale-bottom",
          "contour-index",
          "section-line",
          "picture-around",
          "picture-crown-light",
          "picture-crown-shade",
          "picture-evergreen-light",
          "picture-herb-light",
          "picture-annual-light",
          "picture-shrub-light",
          "picture-stem",
          "picture-roof-dark");

  /** Drawn once for all measures. */
  private static final Map<String, List<ComposedSheet>> SETS = new HashMap<>();

  private static List<ComposedSheet> set(String demo) {
    return SETS.computeIfAbsent(
        demo,
        d -> {
          Outcome outcome = Samples.outcome(d);
          return SheetSet.of(
              outcome, Paper.usual(outcome.plan().info().units()), List.of(), Hands.ONE);
        });
  }

  private static boolean isLarge(ComposedSheet sheet) {
    return sheet.paper().widthMm() * sheet.paper().heightMm() > 300 * 300;
  }

  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everySheet_isAtMostNearlyHalfBlank(String demo) {
    List<String> blank = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      double share = BlankShare.of(sheet);
      if (share > MOST_BLANK) {
        blank.add(sheet.id() + " " + share);
      }
    }
    assertEquals(List.of(), blank);
  }

  /**
   * A client's first page has the yard before and after at one scale: the lot is as wide and as
   * high on paper in both; what is new is drawn only after, and no utility at all.
   */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void clientPage_showsBeforeAndAfterAtOneScale_andIsFilled(String demo) {
    Optional<ComposedSheet> first =
        set(demo).stream().filter(s -> s.id().equals("client")).findFirst();
    if (first.isEmpty()) {
      return;
    }
    assertTrue(BlankShare.of(first.get()) <= MOST_BLANK, demo + " " + BlankShare.of(first.get()));
    Ink.Group before = groups(first.get(), "before").get(0);
    List<List<Xy>> earlier = new ArrayList<>();
    rings(before, "picture-lawn|picture-bare", earlier);
    List<List<Xy>> both = new ArrayList<>();
    groups(first.get(), "site-plan").forEach(g -> rings(g, "picture-lawn|picture-bare", both));
    assertEquals(2, both.size());
    Xy shift = both.get(1).get(0).plus(-earlier.get(0).get(0).x(), -earlier.get(0).get(0).y());
    for (int i = 0; i < earlier.get(0).size(); i++) {
      Xy moved = earlier.get(0).get(i).plus(shift.x(), shift.y());
      assertEquals(0, moved.distance(both.get(1).get(i)), 1e-6, "corner " + i);
    }
    Set<String> titles = new TreeSet<>();
    titles(before, titles);
    List<String> drawnTooEarly =
        Samples.outcome(demo).plan().elements().stream()
            .filter(e -> !e.stands() || e instanceof Element.Utility)
            .map(e -> e.id().toString())
            .filter(titles::contains)
            .toList();
    assertEquals(List.of(), drawnTooEarly);
  }

  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everySheet_noTwoTextsOverlap_nothingLeavesTheFrame(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      assertEquals(List.of(), InkAudit.problems(sheet, FontWidths.shipped()), sheet.id());
    }
  }

  /** A caution of more than two lines is not read on site; the list of harmful plants is one. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyCaution_standsInTwoLines(String demo) {
    List<String> longer = new ArrayList<>();
    int cautions = 0;
    for (ComposedSheet sheet : set(demo)) {
      List<Ink.Group> boxes = new ArrayList<>();
      sheet.inks().forEach(i -> groups(i, "cautions", boxes));
      for (Ink.Group box : boxes) {
        List<Ink.Text> lines =
            box.inks().stream()
                .filter(i -> i instanceof Ink.Text)
                .map(i -> (Ink.Text) i)
                .sorted(Comparator.comparing((Ink.Text t) -> t.at().y()))
                .toList();
        int run = 1;
        for (int i = 1; i < lines.size(); i++) {
          cautions++;
          double step = lines.get(i).at().y() - lines.get(i - 1).at().y();
          run = step < Type.pitch(Type.BODY) + 0.5 ? run + 1 : 1;
          if (run > 2 && !sheet.id().equals("planting")) {
            longer.add(sheet.id() + ": " + lines.get(i).content());
          }
        }
      }
    }
    assertTrue(cautions > 5, "the boxes are found");
    assertEquals(List.of(), longer);
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
      // Plans and legends of one sheet may stand on pages that follow.
      for (ComposedSheet part : parts(demo, sheet)) {
        groups(part, "site-plan").forEach(g -> styles(g, drawn));
        groups(part, "legend").forEach(g -> styles(g, explained));
      }
      if (drawn.isEmpty()) {
        continue;
      }
      explained.remove("block-rule");
      Set<String> idle = new TreeSet<>();
      explained.forEach(style -> idle.add(style.replaceAll("-sample$", "")));
      idle.removeAll(drawn);
      assertEquals(Set.of(), idle, sheet.id());
    }
  }

  /**
   * What is drawn on a map is explained in the legend, or says itself what it is: its style belongs
   * to what stands in the legend of the whole sheet, continuations included.
   */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyMap_showsOnlyWhatALegendExplains(String demo) {
    Set<String> unexplained = new TreeSet<>();
    for (ComposedSheet sheet : set(demo)) {
      Set<String> drawn = new TreeSet<>();
      groups(sheet, "site-plan")
          .forEach(map -> groups(map, "drawing").forEach(g -> styles(g, drawn)));
      if (drawn.isEmpty()) {
        continue;
      }
      Set<String> explained = new TreeSet<>();
      parts(demo, sheet).forEach(part -> groups(part, "legend").forEach(g -> styles(g, explained)));
      explained.forEach(s -> drawn.remove(s.replaceAll("-sample$", "")));
      drawn.removeAll(PARTS);
      drawn.forEach(s -> unexplained.add(sheet.id() + ": " + s));
    }
    assertEquals(Set.of(), unexplained);
  }

  /** A bed's name in a picture stands over its plants or is led to them: never on a path alone. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyPicture_namesBedsWithinOrWithALeader(String demo) {
    Set<String> beds =
        Samples.outcome(demo).plan().all(Element.Bed.class).stream()
            .map(b -> b.id().title())
            .collect(Collectors.toSet());
    for (ComposedSheet sheet : set(demo)) {
      if (!sheet.id().equals("cover") && !sheet.id().equals("client")) {
        continue;
      }
      List<Xy> ends = new ArrayList<>();
      groups(sheet, "leaders").forEach(g -> ends(g, ends));
      List<List<Xy>> grounds = new ArrayList<>();
      groups(sheet, "site-plan").forEach(g -> rings(g, "picture-mulch|picture-compost", grounds));
      for (Ink.Group labels : groups(sheet, "labels")) {
        for (Ink ink : labels.inks()) {
          if (ink instanceof Ink.Text text && beds.contains(text.content())) {
            Quad room = text.room(FontWidths.shipped());
            assertTrue(
                ends.stream().anyMatch(e -> room.distance(e) < TOUCHING_MM)
                    || grounds.stream().anyMatch(g -> isWithin(text.at(), g)),
                sheet.id() + ": " + text);
          }
        }
      }
    }
  }

  /** On drawings too it stands in its bed, or a stroke leads from it to where that lies. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyDrawing_namesBedsWithinOrWithALeader(String demo) {
    List<String> lost = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Group map : groups(sheet, "site-plan")) {
        for (Element.Bed bed : Samples.outcome(demo).plan().all(Element.Bed.class)) {
          List<List<Xy>> own = new ArrayList<>();
          groups(map, "drawing").forEach(g -> named(g, bed.id().toString(), own));
          if (!own.isEmpty() && !isReadAsItsName(map, bed.id().title(), own)) {
            lost.add(sheet.id() + ": " + bed.id().title());
          }
        }
      }
    }
    assertEquals(List.of(), lost);
  }

  /** Or is not written at all. */
  private static boolean isReadAsItsName(Ink.Group map, String name, List<List<Xy>> bed) {
    List<Ink.Path> leaders = new ArrayList<>();
    groups(map, "leaders").forEach(g -> paths(g, leaders));
    for (Ink.Group labels : groups(map, "labels")) {
      for (Ink ink : labels.inks()) {
        Ink.Text text = (Ink.Text) ink;
        if (!text.content().equals(name) && !text.content().startsWith(name + ",")) {
          continue;
        }
        Quad room = text.room(FontWidths.shipped());
        boolean within = bed.stream().anyMatch(ring -> isWithin(text.at(), ring));
        boolean led =
            leaders.stream()
                .flatMap(l -> l.tracks().stream())
                .anyMatch(
                    t ->
                        room.distance(t.points().get(1)) < LINES_MM
                            && bed.stream().anyMatch(r -> isWithin(t.points().get(0), r)));
        if (!within && !led) {
          return false;
        }
      }
    }
    return true;
  }

  private static void paths(Ink ink, List<Ink.Path> paths) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> paths(i, paths));
    } else if (ink instanceof Ink.Path path) {
      paths.add(path);
    }
  }

  /** The outlines of the thing of that title. */
  private static void named(Ink ink, String title, List<List<Xy>> found) {
    if (ink instanceof Ink.Group group) {
      if (group.title().equals(title)) {
        rings(group, "bed", found);
      }
      group.inks().forEach(i -> named(i, title, found));
    }
  }

  private static void ends(Ink ink, List<Xy> ends) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> ends(i, ends));
    } else if (ink instanceof Ink.Path path) {
      path.tracks().forEach(t -> ends.add(t.points().get(t.points().size() - 1)));
    }
  }

  private static void rings(Ink ink, String styles, List<List<Xy>> rings) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> rings(i, styles, rings));
    } else if (ink instanceof Ink.Path path && path.style().name().matches(styles)) {
      path.tracks().forEach(t -> rings.add(t.points()));
    }
  }

  /** Inside its bounds: the beds of the demos lie square. */
  private static boolean isWithin(Xy at, List<Xy> ring) {
    return at.x() > ring.stream().mapToDouble(Xy::x).min().orElseThrow()
        && at.x() < ring.stream().mapToDouble(Xy::x).max().orElseThrow()
        && at.y() > ring.stream().mapToDouble(Xy::y).min().orElseThrow()
        && at.y() < ring.stream().mapToDouble(Xy::y).max().orElseThrow();
  }

  /** Plan content: north arrow, written and graphic scale on each map, not on the sheet alone. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyMap_hasItsNorthArrowItsScaleAndItsBar(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      int maps = groups(sheet, "site-plan").size();
      assertEquals(maps, groups(sheet, "north-arrow").size(), sheet.id());
      assertEquals(maps, groups(sheet, "scale-bar").size(), sheet.id());
      long written =
          InkAudit.texts(sheet).stream().filter(t -> t.content().startsWith("Scale 1")).count();
      assertTrue(written >= maps, sheet.id());
    }
  }

  /**
   * Upright texts run up the sheet, so that all are read from below or from the right; also those
   * beside a side of the lot that leans a little.
   */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyText_isReadFromBelowOrFromTheRight(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Text text : InkAudit.texts(sheet)) {
        double turn = text.turnDegrees();
        assertTrue(turn >= -105 - 1e-9 && turn < 75, sheet.id() + ": " + text);
      }
    }
  }

  /**
   * A set that a crew carries: at most eight large sheets, and six pages of which four are theirs.
   */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everySet_isSmallEnoughToCarry(String demo) {
    List<String> large = new ArrayList<>();
    List<String> pages = new ArrayList<>();
    set(demo).forEach(s -> (isLarge(s) ? large : pages).add(s.id()));
    assertTrue(large.size() <= 8, large.toString());
    assertTrue(pages.size() <= 6, pages.toString());
    assertTrue(pages.stream().filter(p -> p.startsWith("crew")).count() <= 4, pages.toString());
  }

  /** A sheet is read by people who never see the plan's script: no words of it, no gaps to fill. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyText_isPlain_withoutWordsOfTheScript(String demo) {
    List<String> code = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      InkAudit.texts(sheet).stream()
          .map(Ink.Text::content)
          .filter(t -> t.matches(".*[`{}].*|.*\\b(null|NaN)\\b.*"))
          .forEach(t -> code.add(sheet.id() + ": " + t));
    }
    assertEquals(List.of(), code);
  }

  /** Who works with metric tapes meets no feet on any sheet, and the other way round. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyText_measuresInThePlansSystem(String demo) {
    boolean us = Samples.outcome(demo).plan().info().units() == UnitSystem.US;
    Pattern foreign = us ? METRIC : FEET;
    List<String> found = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      InkAudit.texts(sheet).stream()
          .map(Ink.Text::content)
          .filter(t -> foreign.matcher(t).find())
          .forEach(t -> found.add(sheet.id() + ": " + t));
    }
    assertEquals(List.of(), found);
  }

  /** A measure is not read through a bed: neither its line nor those that lead to it. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyDimension_runsBesideBeds(String demo) {
    List<String> through = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Group map : groups(sheet, "site-plan")) {
        List<List<Xy>> beds = new ArrayList<>();
        rings(map, "bed", beds);
        List<List<Xy>> lines = new ArrayList<>();
        groups(map, "dimensions").forEach(g -> rings(g, "dimension", lines));
        for (List<Xy> line : lines) {
          for (List<Xy> bed : beds) {
            if (samples(line).anyMatch(at -> isDeepWithin(at, bed))) {
              through.add(sheet.id() + ": " + line + " through " + bed);
            }
          }
        }
      }
    }
    assertEquals(List.of(), through);
  }

  /**
   * Nor is anything written over the line of a measure, or over one that leads to it, its own
   * figure included.
   */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyDimension_runsThroughNoText(String demo) {
    for (ComposedSheet sheet : set(demo)) {
      assertEquals(List.of(), InkAudit.textsOnMeasures(sheet, FontWidths.shipped()), sheet.id());
    }
  }

  /** The tip of a line that reaches over the edge is no line through the bed. */
  private static boolean isDeepWithin(Xy at, List<Xy> ring) {
    return Stream.of(at.plus(1, 1), at.plus(1, -1), at.plus(-1, 1), at.plus(-1, -1))
        .allMatch(corner -> isWithin(corner, ring));
  }

  private static Stream<Xy> samples(List<Xy> line) {
    Xy from = line.get(0);
    Xy to = line.get(line.size() - 1);
    int n = 1 + (int) from.distance(to);
    return IntStream.rangeClosed(0, n)
        .mapToObj(i -> from.plus((to.x() - from.x()) * i / n, (to.y() - from.y()) * i / n));
  }

  /** A crew finds each number of its tapes on a map, beside the point that it sets out. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyPointOfTheTapes_hasItsNumberOnAMap(String demo) {
    assertEquals(Set.of(), PointNumbers.missing(set(demo)));
    boolean hasTapes =
        set(demo).stream()
            .flatMap(s -> InkAudit.texts(s).stream())
            .anyMatch(t -> t.content().matches("Tapes( in m)?: first A to B, .*"));
    assertEquals(hasTapes, !PointNumbers.drawn(set(demo)).isEmpty());
  }

  /** A fence's name is read beside it: not on its own line, not over the edge of the lot. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyFenceName_standsClearOfItsLineAndTheLotLine(String demo) {
    Set<String> names =
        Samples.outcome(demo).plan().all(Element.Fence.class).stream()
            .map(f -> f.id().title())
            .collect(Collectors.toSet());
    List<String> over = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Group map : groups(sheet, "site-plan")) {
        List<List<Xy>> lines = new ArrayList<>();
        groups(map, "drawing").forEach(g -> rings(g, "lot-line|fence.*", lines));
        for (Ink.Group labels : groups(map, "labels")) {
          for (Ink ink : labels.inks()) {
            if (ink instanceof Ink.Text text && names.contains(text.content())) {
              Quad room = text.room(FontWidths.shipped());
              lines.stream()
                  .filter(line -> isCrossed(room, line))
                  .forEach(line -> over.add(sheet.id() + ": " + text.content()));
            }
          }
        }
      }
    }
    assertEquals(List.of(), over);
  }

  private static boolean isCrossed(Quad room, List<Xy> line) {
    return IntStream.range(1, line.size())
        .anyMatch(i -> room.crossedBy(line.get(i - 1), line.get(i)));
  }

  /** On paper every label begins with a capital, a figure or a sign, whoever wrote it. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyLabel_beginsWithACapital(String demo) {
    Set<String> names =
        Samples.outcome(demo).plan().elements().stream()
            .map(e -> e.id().name())
            .filter(n -> n.length() > 2 && Character.isLowerCase(n.charAt(0)))
            .collect(Collectors.toSet());
    List<String> lower = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Text text : InkAudit.texts(sheet)) {
        String said = text.content();
        // Lists such as "Zone 1: Apple 1, Apple 2"; long ones are broken after a comma.
        if (names.stream().anyMatch(n -> said.matches(".*: " + Pattern.quote(n) + "(,.*|$)"))) {
          lower.add(sheet.id() + ": " + said);
        }
      }
      for (Ink.Group labels : groups(sheet, "labels")) {
        Set<String> texts = new TreeSet<>();
        contents(labels, texts);
        texts.stream()
            .filter(t -> names.contains(t) || t.startsWith("head,") || t.equals("cistern"))
            .forEach(t -> lower.add(sheet.id() + ": " + t));
      }
    }
    assertEquals(List.of(), lower);
  }

  /** A bar without the name of its row says nothing. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyMonthChart_namesEachOfItsRows(String demo) {
    Set<String> nameless = new TreeSet<>();
    for (ComposedSheet sheet : set(demo)) {
      for (String chart :
          List.of(
              "figure-in-bloom-and-picked-once-grown",
              "figure-in-bloom-and-picked-once-grown-continued",
              "figure-the-year-of-care")) {
        for (Ink.Group figure : groups(sheet, chart)) {
          Set<String> bars = new TreeSet<>();
          groups(figure, "drawing").forEach(g -> titles(g, bars));
          Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
          contents(figure, names);
          bars.stream()
              .map(bar -> bar.replaceAll(", (picked|in bloom)$", ""))
              .filter(
                  bar ->
                      !bar.isEmpty() && !bar.matches("Figure|grid of months|Weed.*|Walk mulch.*"))
              .filter(bar -> !names.contains(bar))
              .forEach(bar -> nameless.add(sheet.id() + ": " + bar));
        }
      }
    }
    assertEquals(Set.of(), nameless);
  }

  /** The nursery's keys stand once for each bed and tree, in one text with its name. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void plantingPlan_callsEachPlantedBedOnce(String demo) {
    Outcome outcome = Samples.outcome(demo);
    Set<String> planted =
        outcome.tables().stream()
            .filter(t -> t.id().equals("planting"))
            .flatMap(t -> t.rows().stream())
            .map(row -> row.get(0).value().map(Object::toString).orElse(""))
            .collect(Collectors.toSet());
    List<String> names =
        outcome.plan().elements().stream()
            .filter(e -> planted.contains(e.id().name()))
            .map(e -> e.id().title())
            .toList();
    // One sample is of ground alone.
    assertTrue(names.size() > 2 || planted.isEmpty(), names.toString());
    List<String> texts = labels(demo, "planting");
    for (String name : names) {
      assertEquals(
          1,
          texts.stream().filter(t -> t.equals(name) || t.startsWith(name + ",")).count(),
          name + " in " + texts);
    }
  }

  /** A name stands only where what it names is drawn: no tap that a sheet does not show. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void everyName_standsWhereTheThingIsDrawn(String demo) {
    List<String> lost = new ArrayList<>();
    for (ComposedSheet sheet : set(demo)) {
      for (Ink.Group map : groups(sheet, "site-plan")) {
        Set<String> drawn = new TreeSet<>();
        groups(map, "drawing").forEach(g -> titles(g, drawn));
        Set<String> texts = new TreeSet<>();
        groups(map, "labels").forEach(g -> contents(g, texts));
        for (Element element : Samples.outcome(demo).plan().elements()) {
          String name =
              element instanceof Element.Utility u && !u.carries().isBlank()
                  ? Character.toUpperCase(u.carries().charAt(0)) + u.carries().substring(1)
                  : element.id().title();
          if (texts.contains(name) && !drawn.contains(element.id().toString())) {
            lost.add(sheet.id() + ": " + element.id());
          }
        }
      }
    }
    assertEquals(List.of(), lost);
  }

  private static void titles(Ink ink, Set<String> titles) {
    if (ink instanceof Ink.Group group) {
      titles.add(group.title());
      group.inks().forEach(i -> titles(i, titles));
    }
  }

  private static void contents(Ink ink, Set<String> texts) {
    if (ink instanceof Ink.Group group) {
      group.inks().forEach(i -> contents(i, texts));
    } else if (ink instanceof Ink.Text text) {
      texts.add(text.content());
    }
  }

  private static List<String> labels(String demo, String id) {
    List<String> texts = new ArrayList<>();
    set(demo).stream()
        .filter(s -> s.id().equals(id))
        .flatMap(s -> groups(s, "site-plan").stream())
        .flatMap(map -> groups(map, "labels").stream())
        .flatMap(g -> g.inks().stream())
        .forEach(i -> texts.add(((Ink.Text) i).content()));
    return texts;
  }

  /** Sections of one kind that differ say whose they are: titles with their names are unlike. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void buildUpSections_haveTitlesThatDiffer(String demo) {
    List<List<MulchSurface>> kinds =
        List.copyOf(
            Samples.outcome(demo).results().all(YardFacts.SURFACES).stream()
                .collect(
                    Collectors.groupingBy(MulchSurface::kind, TreeMap::new, Collectors.toList()))
                .values());
    Set<String> texts = new TreeSet<>();
    set(demo).stream()
        .filter(s -> s.id().startsWith("materials"))
        .forEach(s -> InkAudit.texts(s).forEach(t -> texts.add(t.content())));
    for (List<MulchSurface> kind : kinds) {
      List<String> depths = kind.stream().map(SheetMeasuresTest::chips).distinct().toList();
      for (String depth : depths.size() > 1 ? depths : List.<String>of()) {
        String first =
            kind.stream().filter(s -> chips(s).equals(depth)).findFirst().orElseThrow().of().name();
        assertTrue(
            texts.stream().anyMatch(t -> t.equals(first) || t.startsWith(first + ",")), first);
      }
    }
  }

  private static String chips(MulchSurface surface) {
    return surface.depth(Material.WOOD_CHIPS).map(d -> d.value().toString()).orElse("");
  }

  /** The timetable leaves the plan of the irrigation sheet its scale: that of the layout. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void irrigation_isDrawnAtTheScaleOfTheLayout(String demo) {
    if (set(demo).stream().anyMatch(s -> s.id().equals("irrigation"))) {
      assertEquals(scale(demo, "layout"), scale(demo, "irrigation"));
    }
  }

  private static List<String> scale(String demo, String id) {
    return set(demo).stream()
        .filter(s -> s.id().equals(id))
        .flatMap(s -> InkAudit.texts(s).stream())
        .map(Ink.Text::content)
        .filter(t -> t.startsWith("Scale 1"))
        .toList();
  }

  /** The sheet and what it goes on to. */
  private static List<ComposedSheet> parts(String demo, ComposedSheet sheet) {
    String first = sheet.id().replaceAll("-\\d+$", "");
    return set(demo).stream().filter(s -> s.id().replaceAll("-\\d+$", "").equals(first)).toList();
  }

  private static List<Ink.Group> groups(ComposedSheet sheet, String name) {
    List<Ink.Group> found = new ArrayList<>();
    sheet.inks().forEach(ink -> groups(ink, name, found));
    return found;
  }

  private static List<Ink.Group> groups(Ink in, String name) {
    List<Ink.Group> found = new ArrayList<>();
    groups(in, name, found);
    return found;
  }

  private static void groups(Ink ink, String name, List<Ink.Group> found) {
    if (ink instanceof Ink.Group group) {
      if (group.name().equals(name)) {
        found.add(group);
      }
      group.inks().forEach(i -> groups(i, name, found));
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
