package yardloom.site.path;

import java.util.Optional;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Sources;
import yardloom.site.path.PathWords.PathAsked;

/**
 * What is asked of paths of one use, each value with its source; empty where nothing is asked. A
 * plan or regional file replaces any of it with {@code pathRule}.
 *
 * <p>References: [1] City of Los Angeles, Department of Building and Safety, answers on disabled
 * access: 36 in clear. [2] ICC A117.1, 403.5.1: 48 in for exterior routes. [3] 2010 ADA Standards,
 * 403.5.3 passing spaces, as quoted; 304.3.1 turning circle, from memory. Widths on foot and with a
 * barrow are common practice; published ones disagree (18 to 24 in, 30 to 36 in).
 *
 * @param least narrower is a warning
 * @param advised narrower is a note
 * @param turning diameter of the circle to turn in where a path ends
 * @param passing width at which two pass each other
 * @param passingEvery greatest way between two places to pass
 */
public record PathStandard(
    Cited<Length> least,
    Optional<Cited<Length>> advised,
    Optional<Cited<Length>> turning,
    Optional<Cited<Length>> passing,
    Optional<Cited<Length>> passingEvery) {
  private static final Source EXTERIOR =
      Source.read(
          "ICC A117.1, clear width of exterior routes", "International Code Council", 0, "403.5.1");

  private static final Source PASSING =
      Source.read(
          "2010 ADA Standards: passing spaces of 60 by 60 in, 200 ft apart at most",
          "US Department of Justice",
          2010,
          "403.5.3, as quoted");

  private static final Source TURNING =
      Source.memory(
          "2010 ADA Standards: turning space, a circle of 60 in",
          "US Department of Justice",
          2010,
          "304.3.1");

  private static final Source BARROW_TURN =
      Source.commonPractice("a barrow is about 5 ft long and turns in a circle of that width");

  private static final PathStandard FOOT =
      new PathStandard(
          new Cited<>(Length.inches(18), Sources.PATH_WIDTH),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static final PathStandard BARROW =
      new PathStandard(
          new Cited<>(Length.inches(30), Sources.PATH_WIDTH),
          Optional.empty(),
          Optional.of(new Cited<>(Length.inches(60), BARROW_TURN)),
          Optional.empty(),
          Optional.empty());

  private static final PathStandard ACCESSIBLE =
      new PathStandard(
          new Cited<>(Length.inches(36), Sources.ACCESSIBLE_WIDTH),
          Optional.of(new Cited<>(Length.inches(48), EXTERIOR)),
          Optional.of(new Cited<>(Length.inches(60), TURNING)),
          Optional.of(new Cited<>(Length.inches(60), PASSING)),
          Optional.of(new Cited<>(Length.feet(200), PASSING)));

  /** The standard for a use in this plan. */
  public static PathStandard of(Plan plan, PathUse use) {
    PathStandard standard =
        switch (use) {
          case FOOT -> FOOT;
          case BARROW -> BARROW;
          case ACCESSIBLE -> ACCESSIBLE;
        };
    for (Attributes.Entry<PathAsked> entry : plan.attributes().all(PathAsked.KEY)) {
      if (entry.value().use() == use) {
        standard = standard.with(entry.value());
      }
    }
    return standard;
  }

  private PathStandard with(PathAsked asked) {
    Source by = Source.plan("path rule by " + asked.rule() + "; verify locally");
    return new PathStandard(
        asked.least().map(l -> new Cited<>(l, by)).orElse(least),
        asked.advised().map(l -> new Cited<>(l, by)).or(() -> advised),
        asked.turning().map(l -> new Cited<>(l, by)).or(() -> turning),
        asked.passing().map(l -> new Cited<>(l, by)).or(() -> passing),
        asked.passingEvery().map(l -> new Cited<>(l, by)).or(() -> passingEvery));
  }
}
