package yardloom.site.bed;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.geom.Nearby;
import yardloom.kernel.geom.Reach;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.site.country.DigCalls;
import yardloom.site.element.Covering;
import yardloom.site.element.Show;
import yardloom.site.element.Sources;

/** Rules about beds: what they overlap and whether they can be reached. */
public final class BedRules {
  static final Length REACH = Length.inches(24);
  static final Length STANDING_ROOM = Length.inches(12);
  private static final Area TRIFLE = Area.squareMetres(0.01);

  private BedRules() {}

  public static List<Finding> overlaps(Plan plan) {
    List<Element> others = Covering.elements(plan);
    Nearby nearby = new Nearby(others.stream().map(Element::shape).toList());
    List<Finding> findings = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      for (int i : nearby.to(bed.shape(), Length.ZERO)) {
        Element other = others.get(i);
        boolean counted =
            other instanceof Element.MulchedGround
                || other instanceof Element.Bed && other.id().compareTo(bed.id()) >= 0;
        if (!counted) {
          overlap(plan, bed, other, findings);
        }
      }
    }
    return findings;
  }

  private static void overlap(Plan plan, Element.Bed bed, Element other, List<Finding> findings) {
    Shape both = bed.shape().and(other.shape());
    if (both.area().compareTo(TRIFLE) > 0) {
      findings.add(
          Finding.of(
                  "site.bed-overlap",
                  Severity.ERROR,
                  "overlaps " + other.id() + " on " + Show.area(plan, both.area()),
                  "take the other off its shape with `-`, or move one of them",
                  Sources.PLAN)
              .about(bed.id(), bed.place())
              .marking(both));
    }
  }

  public static List<Finding> keepOut(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.KeepOut keepOut : plan.all(Element.KeepOut.class)) {
      for (Element element : Covering.elements(plan)) {
        boolean passable =
            element instanceof Element.Path
                || element instanceof Element.Fence
                || element instanceof Element.MulchedGround;
        Shape both = element.shape().and(keepOut.shape());
        if (!passable && both.area().compareTo(TRIFLE) > 0) {
          findings.add(
              Finding.of(
                      "site.keep-out",
                      Severity.ERROR,
                      Show.area(plan, both.area())
                          + " lie in "
                          + keepOut.id()
                          + ", kept free because of "
                          + keepOut.reason(),
                      "move it, or trim its shape with `-`",
                      Sources.PLAN)
                  .about(element.id(), element.place())
                  .marking(both));
        }
      }
    }
    return findings;
  }

  public static List<Finding> utilities(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Element.Utility utility : plan.all(Element.Utility.class)) {
      for (Element element : Covering.elements(plan)) {
        Shape both = element.shape().and(utility.shape());
        if (both.area().compareTo(TRIFLE) > 0) {
          findings.add(
              Finding.of(
                      "site.utility-clearance",
                      Severity.WARNING,
                      "comes closer than "
                          + Show.length(plan, utility.clearance())
                          + " to "
                          + utility.id()
                          + " ("
                          + utility.carries()
                          + ") on "
                          + Show.area(plan, both.area()),
                      "have buried lines marked before any digging"
                          + DigCalls.inBrackets(plan)
                          + ", dig by hand there, or move it",
                      Sources.BURIED_LINES)
                  .about(element.id(), element.place())
                  .marking(both));
        }
      }
    }
    return findings;
  }

  public static List<Finding> reach(Plan plan) {
    List<Element> standing = new ArrayList<>();
    standing.addAll(plan.all(Element.Building.class));
    standing.addAll(plan.all(Element.Structure.class));
    standing.addAll(plan.all(Element.Fence.class));
    standing.addAll(plan.all(Element.Bed.class));
    Nearby nearby = new Nearby(standing.stream().map(Element::shape).toList());
    List<Finding> findings = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      List<Shape> blocked = new ArrayList<>();
      for (int i : nearby.to(bed.shape(), STANDING_ROOM)) {
        if (!standing.get(i).id().equals(bed.id())) {
          blocked.add(standing.get(i).shape());
        }
      }
      Shape beyond = Reach.beyond(bed.shape(), blocked, REACH, STANDING_ROOM);
      if (beyond.area().compareTo(TRIFLE) > 0) {
        findings.add(
            Finding.of(
                    "site.bed-reach",
                    Severity.WARNING,
                    Show.area(plan, beyond.area())
                        + " lie further than "
                        + Show.small(plan, REACH)
                        + " from where one can stand",
                    "make the bed narrower, give it a path on both sides, or lay stepping stones",
                    Sources.REACH)
                .about(bed.id(), bed.place())
                .marking(beyond));
      }
    }
    return findings;
  }

  public static List<Finding> stripGains(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<StripGain> entry : plan.attributes().all(StripGain.KEY)) {
      StripGain gain = entry.value();
      findings.add(
          Finding.of(
                  "site.strip-gain",
                  Severity.NOTE,
                  String.format(
                      java.util.Locale.ROOT,
                      "laid at a bearing of %.1f° the beds cover %s, %s more than along the longest"
                          + " edge",
                      gain.bearing().degrees(),
                      Show.area(plan, gain.area()),
                      Show.area(plan, gain.area().minus(gain.plain()))),
                  "keep it if the paths still lead where they should",
                  Sources.COORDINATE_AREA)
              .about(gain.group(), entry.place()));
    }
    return findings;
  }
}
