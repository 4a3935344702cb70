package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.mulch.BorneDepth;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.materials.mulch.BorneDepths;
import yardloom.materials.mulch.GroundKeys;
import yardloom.materials.mulch.LengthSetting;
import yardloom.materials.mulch.MulchSettings;
import yardloom.materials.mulch.Weed;

/**
 * The surfaces of a plan: every path, tree ring, bed and mulched ground without what wins over it,
 * so that no ground is counted twice.
 *
 * <p>Hard things (buildings with the strip along their walls, structures, paving, tree trunks with
 * the gap about them) win over everything; then paths over tree rings over beds over ground mulched
 * whole; among equals the first by name wins. What is left of nothing is left out. The strip along
 * a wall and the gap at a trunk are sourced in {@link LengthSetting}.
 *
 * <p>References: plane geometry; no publication is needed.
 */
public final class SurfaceLayout {
  private static final Source OUTLINE =
      Source.plan("outlines on the plan, ground claimed twice counted once");

  private final Plan plan;
  private final MulchSettings settings;
  private final StackBuilder stacks;
  private final BorneDepths borne;
  private final List<Claim> claims = new ArrayList<>();
  private final List<MulchSurface> surfaces = new ArrayList<>();

  /** Ground already taken, and by what. */
  private record Claim(String by, Shape shape) {}

  private SurfaceLayout(
      Plan plan,
      MulchSettings settings,
      BorneDepths borne,
      Map<ElementId, Derived<Length>> driplines,
      Set<ElementId> later) {
    this.plan = plan;
    this.settings = settings;
    this.borne = borne;
    this.stacks =
        new StackBuilder(
            settings,
            plan.attributes().all(Weed.KEY).stream().map(e -> e.value()).toList(),
            driplines,
            later);
  }

  /**
   * The surfaces of {@code plan} by kind and name, as its words and the defaults say.
   *
   * @param borne how deep chips may lie on what grows in the beds
   * @param driplines dripline by bed
   * @param later beds and trees of which kinds are planted in another season
   */
  public static List<MulchSurface> of(
      Plan plan, List<BorneDepth> borne, List<Dripline> driplines, Set<ElementId> later) {
    Map<ElementId, Derived<Length>> byBed = new TreeMap<>();
    driplines.forEach(d -> byBed.put(d.in(), d.length()));
    return new SurfaceLayout(plan, MulchSettings.of(plan), new BorneDepths(borne), byBed, later)
        .lay();
  }

  private List<MulchSurface> lay() {
    claimHardGround();
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (path.stands() && path.turn() == PartTurn.NOW) {
        claims.add(new Claim(path.id().toString(), path.shape()));
        continue;
      }
      add(path, SurfaceKind.PATH, path.shape(), depth(path, LengthSetting.PATH_MULCH), null);
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      addRing(tree);
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      boolean annual = bed.use() == Element.BedUse.ANNUAL;
      add(
          bed,
          annual ? SurfaceKind.ANNUAL_BED : SurfaceKind.PERENNIAL_BED,
          bed.shape(),
          bedMulch(bed),
          compost(bed, annual));
    }
    for (Element.MulchedGround ground : plan.all(Element.MulchedGround.class)) {
      add(
          ground,
          SurfaceKind.MULCHED_GROUND,
          ground.shape(),
          depth(ground, LengthSetting.GROUND_MULCH),
          given(
              ground, GroundKeys.COMPOST_DEPTH, LengthSetting.GROUND_COMPOST, "compost depth of "));
    }
    surfaces.sort(Comparator.comparing(MulchSurface::kind).thenComparing(MulchSurface::of));
    return List.copyOf(surfaces);
  }

  private void claimHardGround() {
    Length wallGap = settings.length(LengthSetting.WALL_GAP).value();
    Length trunkGap = settings.length(LengthSetting.TRUNK_GAP).value();
    for (Element e : plan.elements()) {
      switch (e.id().kind()) {
        case BUILDING ->
            claims.add(new Claim(e.id() + " and wall strip", e.shape().grown(wallGap)));
        case STRUCTURE, PAVING -> claims.add(new Claim(e.id().toString(), e.shape()));
        default -> {
          // Other things leave the ground under them to beds and paths.
        }
      }
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      Length radius = tree.trunk().times(0.5).plus(trunkGap);
      if (radius.metres() > 0) {
        claims.add(new Claim(tree.id() + " trunk gap", Shape.circle(tree.at(), radius)));
      }
    }
  }

  /** Near a trunk chips lie no deeper than roots bear, inside beds and where a ring is asked. */
  private void addRing(Element.Tree tree) {
    Length width =
        tree.attributes()
            .get(GroundKeys.TREE_RING)
            .orElse(settings.length(LengthSetting.TREE_RING_WIDTH).value());
    Length radius = tree.trunk().times(0.5).plus(width);
    if (radius.metres() <= 0) {
      return;
    }
    Shape ring = Shape.circle(tree.at(), radius);
    if (tree.attributes().get(GroundKeys.TREE_RING).isEmpty()) {
      ring = ring.and(deeplyMulched());
    }
    add(tree, SurfaceKind.TREE_RING, ring, depth(tree, LengthSetting.TREE_RING_MULCH), null);
  }

  /** The beds and ground in which chips would lie deeper than roots bear. */
  private Shape deeplyMulched() {
    Length bearable = settings.length(LengthSetting.TREE_RING_MULCH).value();
    List<Shape> deep = new ArrayList<>();
    plan.all(Element.Bed.class).stream()
        .filter(bed -> bedMulch(bed).value().compareTo(bearable) > 0)
        .forEach(bed -> deep.add(bed.shape()));
    plan.all(Element.MulchedGround.class).stream()
        .filter(g -> depth(g, LengthSetting.GROUND_MULCH).value().compareTo(bearable) > 0)
        .forEach(g -> deep.add(g.shape()));
    return Shape.union(deep);
  }

  private Derived<Length> bedMulch(Element.Bed bed) {
    LengthSetting usual = LengthSetting.ofBed(bed);
    return bed.attributes().all(GroundKeys.MULCH_DEPTH).isEmpty()
        ? borne.cut(bed, settings.length(usual))
        : depth(bed, usual);
  }

  private void add(
      Element of, SurfaceKind kind, Shape outline, Derived<Length> mulch, Derived<Length> compost) {
    if (outline.isEmpty()) {
      return;
    }
    Derived.Builder why = Derived.by("area = outline − sum over others of ground", OUTLINE);
    why.from("outline of " + of.id(), outline.area(), of.place());
    Shape left = outline;
    for (Claim claim : claims) {
      if (claim.shape().bounds().intersects(left.bounds())) {
        Shape rest = left.minus(claim.shape());
        Area lost = left.area().minus(rest.area());
        if (lost.squareMetres() > 1e-6) {
          why.from("ground of " + claim.by(), lost);
          left = rest;
        }
      }
    }
    if (left.isEmpty()) {
      return;
    }
    claims.add(new Claim(of.id() + " " + kind.title(), left));
    if (of.turn() != PartTurn.NOW) {
      // It keeps its ground from the others, and nothing is laid on it now.
      return;
    }
    surfaces.add(stacks.surface(of, kind, left, why.gives(left.area()), mulch, compost));
  }

  private Derived<Length> depth(Element of, LengthSetting fallback) {
    return of.id().kind() == ElementKind.TREE
        ? settings.length(fallback)
        : given(of, GroundKeys.MULCH_DEPTH, fallback, "mulch depth of ");
  }

  private Derived<Length> compost(Element of, boolean annual) {
    return given(
        of,
        GroundKeys.COMPOST_DEPTH,
        annual ? LengthSetting.ANNUAL_COMPOST : LengthSetting.PERENNIAL_COMPOST,
        "compost depth of ");
  }

  private Derived<Length> given(
      Element of, AttributeKey<Length> key, LengthSetting fallback, String what) {
    List<Attributes.Entry<Length>> said = of.attributes().all(key);
    if (said.isEmpty()) {
      return settings.length(fallback);
    }
    Attributes.Entry<Length> last = said.get(said.size() - 1);
    return Derived.given(last.value(), what + of.id(), last.place());
  }
}
