package yardloom.materials.goods;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.DrawnThing;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.materials.goods.formula.TrellisParts;
import yardloom.materials.surface.LawnEdge;
import yardloom.materials.takeoff.Ordering;

/** Gives cut lists and the bill's lines of lumber, edging, pavers, posts and wire. */
public final class HardGoodsCalculator implements Calculator {
  private static final String NO_SPARES = "no spares included";
  private static final Source OUTLINE = Source.plan("outlines of the plan");

  @Override
  public String id() {
    return "materials.hard-goods";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.SOIL_TOPS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(SawList.FACT, YardFacts.BILL, YardFacts.JOBS, YardFacts.CARRIES, YardFacts.DRAWN);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    FrameWork frames = FrameWork.of(plan);
    for (SawList list : frames.sawLists()) {
      out.give(SawList.FACT, list);
      job(out, WorkTask.BUILD_FRAMES, list.boards());
      line(
          out,
          "lumber " + list.size() + ", " + Say.distance(list.stock(), plan.info().units()),
          list.boards(),
          list.boards(),
          "cut list, " + (list.proven() ? "" : "not proven ") + list.least());
    }
    frames.screws().ifPresent(n -> line(out, "exterior screws", n, n, NO_SPARES));
    frames.stakes().ifPresent(n -> line(out, "stakes", n, n, NO_SPARES));
    plan.all(Element.Bed.class).stream()
        .filter(bed -> bed.turn() == PartTurn.NOW && bed.attributes().get(Frame.KEY).isPresent())
        .forEach(bed -> drawn(bed, out));
    BedFills.of(plan, in, out);
    edgings(plan, in.all(YardFacts.SURFACES), out);
    plan.attributes().all(Trellis.KEY).stream()
        .filter(plan::isNow)
        .forEach(e -> trellis(e.value(), out));
    plan.attributes().all(PaverField.KEY).stream()
        .filter(plan::isNow)
        .forEach(e -> PaverWork.of(plan, e.value(), out));
  }

  private static void edgings(Plan plan, List<MulchSurface> surfaces, Sink out) {
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Optional<Edging> edging = bed.attributes().get(Edging.KEY);
      if (edging.isPresent() && bed.turn() == PartTurn.NOW) {
        Derived<Length> exact =
            Derived.by("outline of the bed where it meets lawn", OUTLINE)
                .from("bed", bed.id(), bed.place())
                .gives(LawnEdge.of(plan, bed, surfaces));
        if (exact.value().metres() == 0) {
          continue;
        }
        Length piece = edging.get().piece();
        Derived<Integer> pieces =
            Derived.by("pieces = outline / piece, rounded up", Ordering.SOURCE)
                .from("outline", exact)
                .from("piece", piece, edging.get().place())
                .gives((int) Math.ceil(exact.value().ratioTo(piece) - 1e-9));
        job(out, WorkTask.SET_EDGING, exact);
        out.give(
            YardFacts.BILL,
            new BillLine(
                BillGroup.HARD_GOODS,
                WorkPhase.EDGE,
                edging.get().what() + " edging, pieces",
                Optional.of(bed.id()),
                Optional.empty(),
                pieces,
                pieces,
                "whole pieces"));
      }
    }
  }

  private static void trellis(Trellis t, Sink out) {
    Derived<Integer> posts =
        Derived.by(
                "posts at ends and bends, none further apart than the spacing", TrellisParts.SOURCE)
            .from("length", t.line().length(), t.place())
            .from("spacing", t.spacing(), t.place())
            .gives(TrellisParts.posts(t.line(), t.spacing()));
    line(out, posts(t), posts, posts, NO_SPARES);
    job(out, WorkTask.SET_POSTS, posts);
    drawn(t, out);
    if (t.wires() > 0) {
      Derived<Length> wire =
          Derived.by("wire = length × wires × 1.1", TrellisParts.SOURCE)
              .from("length", t.line().length(), t.place())
              .from("wires", t.wires(), t.place())
              .gives(TrellisParts.wire(t.line(), t.wires()));
      line(out, wire(t), wire, wire, "a tenth for tails and ties");
      job(out, WorkTask.STRETCH_WIRE, wire);
      Derived<Integer> strainers =
          Derived.by("wires", TrellisParts.SOURCE)
              .from("wires", t.wires(), t.place())
              .gives(t.wires());
      line(out, strainers(t), strainers, strainers, NO_SPARES);
    }
  }

  /** Frames are sawn together, so that their parts stand for no bed of their own. */
  private static void drawn(Element.Bed bed, Sink out) {
    out.give(
        YardFacts.DRAWN,
        new DrawnThing(
            "frame of " + bed.id().title(),
            "frame",
            List.of("lumber", "exterior screws", "stakes"),
            List.of(WorkTask.BUILD_FRAMES),
            WorkPhase.EDGE));
  }

  private static void drawn(Trellis t, Sink out) {
    boolean hasWire = t.wires() > 0;
    out.give(
        YardFacts.DRAWN,
        new DrawnThing(
            t.name(),
            "trellis",
            hasWire ? List.of(posts(t), wire(t), strainers(t)) : List.of(posts(t)),
            hasWire
                ? List.of(WorkTask.SET_POSTS, WorkTask.STRETCH_WIRE)
                : List.of(WorkTask.SET_POSTS),
            WorkPhase.EDGE));
  }

  private static String posts(Trellis t) {
    return "posts for " + t.name();
  }

  private static String wire(Trellis t) {
    return "wire for " + t.name();
  }

  private static String strainers(Trellis t) {
    return "wire strainers for " + t.name();
  }

  private static void job(Sink out, WorkTask task, Derived<?> amount) {
    out.give(YardFacts.JOBS, new Job(task, WorkPhase.EDGE, amount));
  }

  private static void line(
      Sink out, String item, Derived<?> exact, Derived<?> order, String allowance) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.HARD_GOODS,
            WorkPhase.EDGE,
            item,
            Optional.empty(),
            Optional.empty(),
            exact,
            order,
            allowance));
  }
}
