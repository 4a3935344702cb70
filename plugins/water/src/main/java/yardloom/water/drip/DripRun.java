package yardloom.water.drip;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.drip.formula.HeaderLayout.Joined;
import yardloom.water.pipe.formula.Water;

/** Dripline laid in one bed or round one tree. */
public record DripRun(SourceRef place, DripChoice choice, Ground on, Laid laid, Totals totals) {
  /**
   * Where it lies and what it waters.
   *
   * @param bed the bed or tree
   * @param waters the bed or tree, and the trees that stand in the bed or in its ring without
   *     dripline of their own
   * @param shape where tube may lie
   * @param area what it waters
   * @param contour how much the ground falls along the bed, where its rows follow the contour
   *     instead
   */
  public record Ground(
      ElementId bed,
      List<ElementId> waters,
      Shape shape,
      Area area,
      Optional<Derived<Double>> contour) {
    public Ground {
      waters = List.copyOf(waters);
    }
  }

  /**
   * What is laid out.
   *
   * @param joined the tubes, each from where it is fed, and the headers that join them
   * @param emitters those of each kind of plant, where they are set one by one
   */
  public record Laid(List<Joined> joined, List<Emitters.OfKind> emitters) {
    public Laid {
      joined = List.copyOf(joined);
      emitters = List.copyOf(emitters);
    }
  }

  /**
   * All of it together.
   *
   * @param length of all tubes
   * @param header length of all headers
   * @param outlets emitters of all tubes
   * @param rated what the outlets give where no tube takes pressure
   */
  public record Totals(
      Derived<Length> length,
      Derived<Length> header,
      Derived<Integer> outlets,
      Derived<Flow> rated) {}

  /** Dripline by bed. */
  public static final FactKey<DripRun> KEY =
      FactKey.many("water.drip", DripRun.class).called("dripline");

  private static final Source RATED =
      Source.computed(
          "EPANET 2.2 User Manual", "US EPA", 2020, "chapter 3, emitters; exponents from memory");

  /** The bed or tree. */
  public ElementId bed() {
    return on.bed();
  }

  /** Whether new plants drink from its outlets: not so rings under a crown to be. */
  public boolean reachesRootBalls() {
    return bed().kind() == ElementKind.BED;
  }

  /** The plants that it waters. */
  public List<Stand> plants(Facts facts) {
    return facts.all(YardFacts.STANDS).stream()
        .filter(stand -> on.waters().contains(stand.in()))
        .toList();
  }

  /** The tubes. */
  public List<Line> rows() {
    return laid.joined().stream().map(Joined::line).toList();
  }

  /** Solid tube that joins the rows, inside the bed. */
  public List<Line> headers() {
    return laid.joined().stream().flatMap(j -> j.header().stream()).toList();
  }

  /** Where water comes in: the bed's name, and a number behind it for each further part. */
  public Map<String, Integer> feeds() {
    Map<String, Integer> feeds = new LinkedHashMap<>();
    for (int i = 0; i < laid.joined().size(); i++) {
      if (laid.joined().get(i).from() < 0) {
        feeds.put(bed().toString() + (feeds.isEmpty() ? "" : " " + (feeds.size() + 1)), i);
      }
    }
    return feeds;
  }

  /** What the outlets give where no tube takes pressure, at another pressure than the rated. */
  public Derived<Flow> flowAt(Derived<Pressure> pressure) {
    double headM = Water.head(pressure.value()).metres();
    double one = choice.outlet().flowM3s(headM);
    return Derived.by("rated flow × (pressure / rated pressure)^exponent", RATED)
        .from("rated flow", totals.rated())
        .from("pressure", pressure)
        .from("rated pressure", choice.rated(), place)
        .from("exponent", choice.exponent(), place)
        .gives(Flow.cubicMetresPerSecond(one * totals.outlets().value()));
  }
}
