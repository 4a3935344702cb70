package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.FallFromHouse;
import yardloom.kernel.ground.PathSlope;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;

/** Rules about slopes; they say nothing where no levels are given. */
public final class GroundRules {
  private static final double RUNNING = 1 / 20.0;
  private static final double RAMP = 1 / 12.0;
  private static final double CROSS = 1 / 48.0;
  private static final double SLACK = 1e-6;

  /** 15 degrees. */
  private static final double TOO_STEEP = StrictMath.tan(StrictMath.toRadians(15));

  private static final Length LEVEL = Length.inches(1);

  private static final Source WALKS =
      Source.read("ICC A117.1, walking surfaces", "International Code Council", 0, "403.3");

  private static final Source SWALES =
      Source.read("Grassed swales", "Stormwater Center", 0, "slides on section and slope");

  private GroundRules() {}

  public static List<Finding> fallFromHouse(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    plan.attributes()
        .get(Surface.KEY)
        .ifPresent(
            surface -> {
              for (Element.Building house : plan.all(Element.Building.class)) {
                if (!house.neighbour()) {
                  worst(plan, surface, house)
                      .filter(w -> !w.fall().passes())
                      .ifPresent(w -> findings.add(finding(house, w)));
                }
              }
            });
    return findings;
  }

  /** The least fall among the sides of a house, with where it was read. */
  private record Worst(FallFromHouse fall, Point at) {}

  private static Optional<Worst> worst(Plan plan, Surface surface, Element.Building house) {
    Worst worst = null;
    for (Shape part : house.shape().parts()) {
      List<Point> ring = part.corners();
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % ring.size());
        Point middle = a.moved(b.x().minus(a.x()).div(2), b.y().minus(a.y()).div(2));
        // The outside lies to the right of a counter-clockwise wall.
        double share = FallFromHouse.REACH.ratioTo(a.distance(b));
        Point out = middle.moved(b.y().minus(a.y()).times(share), b.x().minus(a.x()).times(-share));
        Optional<Length> wall = surface.levelAt(middle);
        Optional<Length> ground = surface.levelAt(out);
        if (wall.isPresent() && ground.isPresent()) {
          boolean hard =
              plan.all(Element.Paving.class).stream()
                  .anyMatch(p -> p.shape().contains(middle) || p.shape().contains(out));
          FallFromHouse fall =
              FallFromHouse.judge(wall.get(), ground.get(), FallFromHouse.REACH, hard);
          if (worst == null || fall.ratio() < worst.fall().ratio()) {
            worst = new Worst(fall, middle);
          }
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  private static Finding finding(Element.Building house, Worst worst) {
    return Finding.of(
            "site.fall-from-house",
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "the ground %s %.1f %% away from it over 10 ft (3 m) where it is worst; a fall of 5 %%"
                    + " is asked, 2 %% on hard surfaces",
                worst.fall().ratio() < 0 ? "rises" : "falls",
                Math.abs(worst.fall().ratio()) * 100),
            "regrade, or lead water away in a drain; beds and mulch against the wall must keep the"
                + " fall. The local code decides",
            FallFromHouse.SOURCE)
        .about(house.id(), house.place())
        .marking(Shape.circle(worst.at(), Length.metres(0.3)));
  }

  public static List<Finding> pathSlope(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    for (Element.Path path :
        surface.isPresent() ? plan.all(Element.Path.class) : List.<Element.Path>of()) {
      Optional<PathSlope> slope = PathSlope.of(surface.get(), path.line());
      if (slope.isEmpty()) {
        continue;
      }
      boolean accessible = path.use() == PathUse.ACCESSIBLE;
      double running = slope.get().running();
      double cross = slope.get().cross();
      if (accessible && running > RUNNING + SLACK) {
        add(
            path,
            findings,
            running > RAMP + SLACK
                ? "is steeper than a ramp may be (8.3 %)"
                : "must be built as a ramp, 36 in (91 cm) clear with landings of at most 2 %"
                    + " (5 % is the most for a walk)",
            "along",
            running);
      }
      if (accessible && cross > CROSS + SLACK) {
        add(path, findings, "tilts more than 2.1 %", "across", cross);
      }
      if (path.use() == PathUse.BARROW && running > RAMP + SLACK) {
        add(path, findings, "is hard going with a full barrow (above 8.3 %)", "along", running);
      }
    }
    return findings;
  }

  private static void add(
      Element.Path path, List<Finding> findings, String what, String way, double ratio) {
    boolean barrow = path.use() == PathUse.BARROW;
    findings.add(
        Finding.of(
                "site.path-slope",
                barrow ? Severity.NOTE : Severity.WARNING,
                String.format(Locale.ROOT, "slopes %.1f %% %s: it %s", ratio * 100, way, what),
                "lead it along the slope, or cut and fill under it; accessibility rules bind public"
                    + " places and are good practice at home",
                barrow ? Source.commonPractice("barrow paths stay below 1 in 12") : WALKS)
            .about(path.id(), path.place()));
  }

  public static List<Finding> swales(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(s -> swale(plan, structure, s, findings));
    }
    return findings;
  }

  private static void swale(
      Plan plan, Element.Structure at, LevelWords.SwaleLine s, List<Finding> findings) {
    if (s.swale().sides() < Swale.STEEPEST) {
      findings.add(
          swaleFinding(
              at,
              String.format(
                  Locale.ROOT, "its sides of %.1f:1 are steeper than 2:1", s.swale().sides()),
              "flatten them to 3:1"));
    }
    plan.attributes()
        .get(Surface.KEY)
        .flatMap(g -> g.slopeAt(s.line().middle()))
        .filter(slope -> slope.ratio() > TOO_STEEP)
        .ifPresent(slope -> findings.add(tooSteep(at, slope.ratio())));
    for (Element.Building house : plan.all(Element.Building.class)) {
      if (house.shape().distance(at.shape()).compareTo(FallFromHouse.REACH) < 0) {
        findings.add(
            swaleFinding(
                at,
                "comes within 10 ft (3 m) of "
                    + house.id()
                    + "; there a swale must lead water away at 2 % or more, not hold it",
                "move it away from the house"));
      }
    }
    plan.attributes()
        .get(Surface.KEY)
        .flatMap(g -> unevenness(g, s))
        .ifPresent(
            off -> {
              if (off.compareTo(LEVEL) > 0) {
                findings.add(
                    swaleFinding(
                        at,
                        "the ground along it differs by "
                            + Show.length(plan, off)
                            + "; a swale on contour lies level",
                        "follow the contour, or let it fall 1 to 2 % to an outlet"));
              }
            });
  }

  private static Finding tooSteep(Element.Structure at, double ratio) {
    return Finding.of(
            "site.swale",
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "the ground there slopes %.0f %%; above 27 %% (15°) a swale may slip or burst",
                ratio * 100),
            "hold the water elsewhere, or ask a licensed engineer",
            Source.commonPractice("swales keep to slopes below 15°"))
        .about(at.id(), at.place());
  }

  private static Optional<Length> unevenness(Surface surface, LevelWords.SwaleLine s) {
    Length low = null;
    Length high = null;
    for (Point p : s.line().points()) {
      Optional<Length> level = surface.levelAt(p);
      if (level.isEmpty()) {
        return Optional.empty();
      }
      low = low == null ? level.get() : low.min(level.get());
      high = high == null ? level.get() : high.max(level.get());
    }
    return Optional.of(high.minus(low));
  }

  private static Finding swaleFinding(Element.Structure at, String text, String advice) {
    return Finding.of("site.swale", Severity.WARNING, text, advice, SWALES)
        .about(at.id(), at.place());
  }
}
