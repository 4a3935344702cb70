package yardloom.sun.obstacle;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.Leaf;
import yardloom.kernel.plan.Element.RoofForm;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.sun.body.Eaves;
import yardloom.sun.obstacle.CrownWords.Crown;
import yardloom.sun.position.Dates;
import yardloom.sun.position.SunYear;

/**
 * Gives what the plan's buildings, structures, fences and trees put into the sun's way.
 *
 * <p>Walls, roofs and structures are solid. Fences pass their openness. A crown passes light by
 * month, in leaf and bare parts of a month by days; its trunk is solid up to a quarter into the
 * crown. Without dates, deciduous trees bear leaves from 15 April to 1 November, in the south half
 * a year later (common practice, no source); evergreens always. Gives nothing without a site.
 */
public final class SiteObstacles implements Calculator {
  private static final Dates NORTH = new Dates(MonthDay.of(4, 15), MonthDay.of(11, 1));
  private static final Dates SOUTH = new Dates(MonthDay.of(10, 15), MonthDay.of(5, 1));
  private static final List<Double> SOLID = Collections.nCopies(12, 0.0);

  @Override
  public String id() {
    return "sun.site-obstacles";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    if (plan.site().isEmpty()) {
      return;
    }
    boolean south = plan.isSouthern();
    List<Obstacle> found = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> building(found, b));
    for (Element.Structure s : plan.all(Element.Structure.class)) {
      add(found, s, Form.PRISM, s.shape(), Length.ZERO, s.height(), SOLID);
    }
    for (Element.Fence f : plan.all(Element.Fence.class)) {
      List<Double> open = Collections.nCopies(12, f.openness());
      add(found, f, Form.PRISM, f.shape(), Length.ZERO, f.height(), open);
    }
    plan.all(Element.Tree.class).forEach(t -> tree(found, t, south));
    found.forEach(o -> out.give(YardFacts.OBSTACLES, o));
  }

  private static void add(
      List<Obstacle> into,
      Element of,
      Form form,
      Shape footprint,
      Length base,
      Length top,
      List<Double> passes) {
    if (top.compareTo(base) > 0 && !footprint.isEmpty()) {
      into.add(new Obstacle(of.id(), form, footprint, base, top, passes));
    }
  }

  private static void building(List<Obstacle> into, Element.Building b) {
    add(into, b, Form.PRISM, b.shape(), Length.ZERO, b.eavesHeight(), SOLID);
    if (b.roof() != RoofForm.FLAT) {
      Shape eaves = Eaves.of(b.shape(), b.overhang());
      Form form = Form.valueOf(b.roof().name());
      add(into, b, form, eaves, b.eavesHeight(), b.ridgeHeight(), SOLID);
    } else if (b.overhang().metres() > 0) {
      // A flat roof's edge, 20 cm thick.
      Shape eaves = Eaves.of(b.shape(), b.overhang());
      Length under = b.eavesHeight().minus(Length.metres(0.2)).max(Length.ZERO);
      add(into, b, Form.PRISM, eaves, under, b.eavesHeight(), SOLID);
    }
  }

  private static void tree(List<Obstacle> into, Element.Tree t, boolean south) {
    Crown crown = t.attributes().get(CrownWords.CROWN).orElse(Crown.USUAL);
    Dates leaves = t.attributes().get(CrownWords.LEAVES).orElse(south ? SOUTH : NORTH);
    boolean evergreen = t.leaf() == Leaf.EVERGREEN;
    List<Double> passes =
        evergreen ? Collections.nCopies(12, crown.inLeaf()) : byMonth(leaves, crown);
    Form form = crown.cylinder() ? Form.CYLINDER : Form.ELLIPSOID;
    add(into, t, form, t.shape(), t.crownBase(), t.height(), passes);
    if (t.trunk().metres() > 0) {
      Length top = t.crownBase().plus(t.height().minus(t.crownBase()).times(0.25));
      Shape stem = Shape.circle(t.at(), t.trunk().div(2));
      add(into, t, Form.CYLINDER, stem, Length.ZERO, top, SOLID);
    }
  }

  /** Shares that pass, weighted by the days in leaf of each month. */
  static List<Double> byMonth(Dates leaves, Crown crown) {
    int[] days = new int[12];
    int[] inLeaf = new int[12];
    for (int day = 0; day < SunYear.DAYS; day++) {
      days[SunYear.month(day)]++;
      inLeaf[SunYear.month(day)] += leaves.holds(day) ? 1 : 0;
    }
    List<Double> passes = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      double share = (double) inLeaf[m] / days[m];
      passes.add(crown.inLeaf() * share + crown.bare() * (1 - share));
    }
    return passes;
  }
}
