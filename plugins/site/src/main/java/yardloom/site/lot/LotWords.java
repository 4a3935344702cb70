package yardloom.site.lot;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.Sides;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.LotScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** Words for the lot and its sides. */
public final class LotWords {
  private LotWords() {}

  @Verb(
      help =
          "The ground that is planned, by its corners. The sides of a lot with four corners are"
              + " called south, east, north and west; others are called side 1, side 2 and so on,"
              + " side 1 running from the first corner to the second.",
      example =
          "lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 120.ft), point(0.ft, 120.ft)])"
              + " { side('south', role: 'front', setback: 25.ft) }")
  public static Handle lot(
      PlanScope in,
      @Arg(name = "corners", help = "corners in order around the lot, in either direction")
          List<Point> corners,
      Consumer<LotScope> block) {
    List<Point> ring = new ArrayList<>(corners);
    if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    return finish(in, new Lot(in.place(), Shape.polygon(ring), edges(ring)), block);
  }

  @Verb(
      help =
          "The ground that is planned, from a shape in one part. The sides of a lot with four"
              + " corners are called south, east, north and west; others are called side 1, side 2"
              + " and so on, counter-clockwise, side 1 starting at the westernmost corner.",
      example =
          "lotOutline(rect(0.ft, 0.ft, 60.ft, 120.ft)) { side('south', role: 'front', setback:"
              + " 25.ft) }")
  public static Handle lotOutline(
      PlanScope in,
      @Arg(name = "shape", help = "the ground, without holes") Shape shape,
      Consumer<LotScope> block) {
    List<Point> ring = shape.corners();
    if (shape.polygons().get(0).getNumInteriorRing() > 0) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          in.place(),
          "a lot has no holes, this outline has "
              + shape.polygons().get(0).getNumInteriorRing()
              + "; take them out of it and describe that ground with `keepOut`");
    }
    return finish(in, new Lot(in.place(), shape, edges(ring)), block);
  }

  /** The sides of a ring, counter-clockwise, named, without roles. */
  public static List<Lot.Edge> edges(List<Point> ring) {
    int n = ring.size();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      order.add(i);
    }
    boolean clockwise = signedAreaM2(ring) < 0;
    List<Point> ccw = new ArrayList<>(ring);
    if (clockwise) {
      Collections.reverse(ccw);
    }
    List<String> names = n == 4 ? Sides.namesOfFour(ccw) : List.of();
    List<Lot.Edge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      // Edge i of the reversed ring runs from corner n-1-i to n-2-i as they were written.
      int written = clockwise ? ((n - 2 - i) % n + n) % n : i;
      String name = n == 4 ? names.get(i) : "side " + (written + 1);
      Line line = Line.between(ccw.get(i), ccw.get((i + 1) % n));
      edges.add(new Lot.Edge(name, line, EdgeRole.UNSTATED, Length.ZERO, ""));
    }
    return edges;
  }

  @Verb(
      help =
          "The ground that is planned, from a deed; its sides keep the names of the calls and its"
              + " curves stay arcs.",
      example = "lotFrom(parcel) { side('side 1', role: 'front', setback: 25.ft) }")
  public static Handle lotFrom(
      PlanScope in,
      @Arg(name = "deed", help = "what `deed` returned") Deed deed,
      Consumer<LotScope> block) {
    List<Lot.Edge> edges = new ArrayList<>();
    List<Point> ring = new ArrayList<>();
    for (Deed.Side side : deed.sides()) {
      Line line =
          side.arc()
              .map(a -> a.chords(Arc.SAGITTA))
              .orElseGet(() -> Line.between(side.from(), side.to()));
      ring.addAll(line.points().subList(0, line.points().size() - 1));
      edges.add(new Lot.Edge(side.name(), line, EdgeRole.UNSTATED, Length.ZERO, "", side.arc()));
    }
    if (signedAreaM2(ring) < 0) {
      Collections.reverse(edges);
      edges.replaceAll(
          e ->
              new Lot.Edge(
                  e.name(),
                  e.line().reversed(),
                  e.role(),
                  e.setback(),
                  e.rule(),
                  e.arc().map(Arc::reversed)));
    }
    return finish(in, new Lot(in.place(), Shape.polygon(ring), edges), block);
  }

  private static Handle finish(PlanScope in, Lot lot, Consumer<LotScope> block) {
    in.draft().lot(lot);
    if (block != null) {
      block.accept(new LotScope(in.draft(), in.place()));
    }
    return handle(in.draft().lot().orElseThrow());
  }

  private static double signedAreaM2(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      twice += a.x().metres() * b.y().metres() - b.x().metres() * a.y().metres();
    }
    return twice / 2;
  }

  private static Handle handle(Lot lot) {
    Map<String, Line> sides = new TreeMap<>();
    lot.edges().forEach(e -> sides.put(e.name(), e.line()));
    return Handle.withSides(new ElementId(ElementKind.LOT, "lot"), lot.shape(), sides);
  }
}
