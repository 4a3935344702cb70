package yardloom.materials.goods;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.SoilTop;
import yardloom.facts.mulch.Surface;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.formula.Lumber;
import yardloom.materials.goods.formula.Pavers;
import yardloom.materials.goods.formula.TrellisParts;
import yardloom.materials.surface.LawnEdge;
import yardloom.materials.takeoff.Ordering;

/** Gives cut lists and the bill's lines of lumber, edging, pavers, posts and wire. */
public final class HardGoodsCalculator implements Calculator {
  private static final String NO_SPARES = "no spares included";
  private static final double SETTLING = 0.15;
  private static final Source FILL =
      Source.commonPractice("frames are filled to the top; loose soil settles by a seventh or so");
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
    return Set.of(SawList.FACT, YardFacts.BILL, YardFacts.JOBS);
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
    fills(plan, in, out);
    edgings(plan, in.all(YardFacts.SURFACES), out);
    plan.attributes().all(Trellis.KEY).forEach(e -> trellis(e.value(), out));
    plan.attributes().all(PaverField.KEY).forEach(e -> pavers(plan, e.value(), out));
  }

  /**
   * Soil that frames take below compost and chips, and raised beds below compost up to their soil
   * top: they stand on the ground, nothing is dug out.
   */
  private static void fills(Plan plan, Facts in, Sink out) {
    Map<ElementId, SoilTop> tops = new TreeMap<>();
    in.all(YardFacts.SOIL_TOPS).forEach(t -> tops.put(t.in(), t));
    Derived.Builder why = Derived.by("sum over beds of area × (height − layers)", FILL);
    Volume sum = Volume.ZERO;
    for (Surface s : in.all(YardFacts.SURFACES)) {
      Optional<Frame> frame = plan.element(s.of()).flatMap(bed -> bed.attributes().get(Frame.KEY));
      Length compost = s.depth(Material.COMPOST).map(Derived::value).orElse(Length.ZERO);
      Length chips = s.depth(Material.WOOD_CHIPS).map(Derived::value).orElse(Length.ZERO);
      Length height = Length.ZERO;
      Length own =
          s.courses().stream()
              .filter(c -> c.material().kind() == Material.Kind.OWN)
              .map(c -> c.depth().orElseThrow().value())
              .reduce(Length.ZERO, Length::plus);
      Length layers = compost.plus(own);
      if (s.of().kind() == ElementKind.BED && tops.containsKey(s.of())) {
        height = tops.get(s.of()).height();
      } else if (frame.isPresent()) {
        height = Lumber.size(frame.get().size()).width().times(frame.get().courses());
        layers = layers.plus(chips);
      }
      Length fill = height.minus(layers).max(Length.ZERO);
      if (fill.metres() > 0) {
        sum = sum.plus(s.area().value().deep(fill));
        why.from("area of " + s.of(), s.area())
            .from("height of " + s.of(), height, s.place())
            .from("layers of " + s.of() + ", compost and chips", layers);
      }
    }
    if (sum.compareTo(Volume.ZERO) > 0) {
      fill(plan, why.gives(sum), out);
    }
  }

  private static void fill(Plan plan, Derived<Volume> exact, Sink out) {
    Derived<Double> settling = Derived.by("soil settles", FILL).gives(SETTLING);
    line(
        out,
        "soil to fill frames and raised beds",
        exact,
        Ordering.bulk(exact, settling, plan.info().units()),
        "15 % for settling");
    job(out, WorkTask.FILL_FRAMES, exact);
  }

  private static void edgings(Plan plan, List<Surface> surfaces, Sink out) {
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Optional<Edging> edging = bed.attributes().get(Edging.KEY);
      if (edging.isPresent()) {
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
    line(out, "posts for " + t.name(), posts, posts, NO_SPARES);
    job(out, WorkTask.SET_POSTS, posts);
    if (t.wires() > 0) {
      Derived<Length> wire =
          Derived.by("wire = length × wires × 1.1", TrellisParts.SOURCE)
              .from("length", t.line().length(), t.place())
              .from("wires", t.wires(), t.place())
              .gives(TrellisParts.wire(t.line(), t.wires()));
      line(out, "wire for " + t.name(), wire, wire, "a tenth for tails and ties");
      job(out, WorkTask.STRETCH_WIRE, wire);
      Derived<Integer> strainers =
          Derived.by("wires", TrellisParts.SOURCE)
              .from("wires", t.wires(), t.place())
              .gives(t.wires());
      line(out, "wire strainers for " + t.name(), strainers, strainers, NO_SPARES);
    }
  }

  private static void pavers(Plan plan, PaverField field, Sink out) {
    Area ground = field.shape().area();
    Derived<Integer> exact =
        Derived.by("pavers = area / (length × width), rounded up", Pavers.SOURCE)
            .from("area", ground, field.place())
            .from("length", field.length(), field.place())
            .from("width", field.width(), field.place())
            .gives(Pavers.order(ground, field.length(), field.width(), 0));
    Derived<Integer> order =
        Derived.by("pavers × (1 + waste), rounded up", Pavers.SOURCE)
            .from("pavers", exact)
            .from("waste", field.waste(), field.place())
            .gives(Pavers.order(ground, field.length(), field.width(), field.waste()));
    paving(plan, out, "pavers, " + field.name(), field, exact, order, "cuts and breakage");
    Derived<Area> area = Derived.given(ground, "paved ground", field.place());
    job(out, WorkTask.GRADE_BASE, WorkPhase.BUILD, area);
    job(out, WorkTask.LAY_PAVERS, WorkPhase.BUILD, area);
    Length deep = field.thickness().plus(Pavers.BEDDING).plus(field.base());
    Derived<Volume> earth =
        Derived.by("area × (paver + bedding + base)", Pavers.SOURCE)
            .from("area", area)
            .from("paver", field.thickness(), field.place())
            .from("bedding", Pavers.BEDDING)
            .from("base", field.base())
            .gives(ground.deep(deep));
    job(out, WorkTask.DIG_EARTH, WorkPhase.EARTH, earth);
    layer(plan, out, "bedding sand, " + field.name(), ground, Pavers.BEDDING, field);
    layer(plan, out, "gravel base, " + field.name(), ground, field.base(), field);
  }

  private static void layer(
      Plan plan, Sink out, String item, Area ground, Length depth, PaverField field) {
    Derived<Volume> exact =
        Derived.by("compacted volume = area × depth", Pavers.SOURCE)
            .from("area", ground, field.place())
            .from("depth", depth)
            .gives(ground.deep(depth));
    Derived<Double> packing =
        Derived.by("loose over compacted", Source.commonPractice("a fifth more, loose")).gives(0.2);
    paving(
        plan,
        out,
        item,
        field,
        exact,
        Ordering.bulk(exact, packing, plan.info().units()),
        "20 % for packing");
  }

  private static void paving(
      Plan plan,
      Sink out,
      String item,
      PaverField field,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.HARD_GOODS,
            WorkPhase.BUILD,
            item,
            field.paving(plan),
            Optional.empty(),
            exact,
            order,
            allowance));
  }

  private static void job(Sink out, WorkTask task, Derived<?> amount) {
    job(out, task, WorkPhase.EDGE, amount);
  }

  private static void job(Sink out, WorkTask task, WorkPhase phase, Derived<?> amount) {
    out.give(YardFacts.JOBS, new Job(task, phase, amount));
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
