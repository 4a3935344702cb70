package yardloom.materials.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.materials.calc.MulchLimits;
import yardloom.materials.model.LengthSetting;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.MulchSettings;
import yardloom.materials.model.Say;
import yardloom.materials.model.SurfaceKind;
import yardloom.materials.model.TipPile;

/** The plugin's checks that need little more than the settings and the heaps. */
public final class MaterialChecks {
  private static final Source TRUCK =
      Source.read(
          "Chip drops need at least 8 by 15 ft of ground and about 20 ft overhead",
          "trade page of a tree-care firm",
          2018,
          "August");
  private static final Length TRUCK_WIDTH = Length.feet(8);

  private MaterialChecks() {}

  /** All of them. */
  public static List<Check> all() {
    return List.of(new Clearances(), new TipPiles(), new RestingTime());
  }

  /** Bare ground at trunks and walls, and depth over roots. */
  private static final class Clearances implements Check {
    @Override
    public String id() {
      return "materials.clearances";
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      MulchSettings settings =
          plan.attributes().get(MaterialKeys.MULCH).orElseGet(MulchSettings::defaults);
      List<Finding> findings = new ArrayList<>();
      Length trunk = settings.length(LengthSetting.TRUNK_GAP).value();
      if (!plan.all(Element.Tree.class).isEmpty() && !MulchLimits.trunkGapIsEnough(trunk)) {
        findings.add(
            Finding.of(
                "materials.trunk-gap",
                Severity.WARNING,
                "Chips come within " + Say.depth(trunk) + " of tree trunks.",
                "Keep chips at least " + Say.depth(MulchLimits.TRUNK_GAP) + " off the bark.",
                MulchLimits.TREES));
      }
      Length ring = settings.length(LengthSetting.TREE_RING_MULCH).value();
      if (!plan.all(Element.Tree.class).isEmpty()
          && MulchLimits.aroundTree(ring, false) == MulchLimits.Verdict.TOO_MUCH) {
        findings.add(
            Finding.of(
                "materials.tree-depth",
                Severity.WARNING,
                "Chips lie " + Say.depth(ring) + " deep over tree roots.",
                "Use 3 to 4 in on drained soil, 2 to 3 in on heavy soil.",
                MulchLimits.TREES));
      }
      Length wall = settings.length(LengthSetting.WALL_GAP).value();
      if (!plan.all(Element.Building.class).isEmpty() && !MulchLimits.wallGapIsEnough(wall)) {
        findings.add(
            Finding.of(
                "materials.wall-gap",
                Severity.WARNING,
                "Mulch comes within " + Say.depth(wall) + " of the house wall.",
                "Keep " + Say.depth(MulchLimits.WALL_GAP) + " bare along the foundation.",
                MulchLimits.HOUSES));
      }
      return findings;
    }
  }

  /** Whether heaps fit, stay off pavement and trees, and can be reached. */
  private static final class TipPiles implements Check {
    @Override
    public String id() {
      return "materials.tip-piles";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.PILES);
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      List<Finding> findings = new ArrayList<>();
      for (TipPile pile : facts.all(MaterialFacts.PILES)) {
        String name = "the tip spot \"" + pile.spot().name() + "\"";
        if (!pile.fits()) {
          findings.add(
              finding(
                      pile,
                      "materials.pile-fits",
                      "A load of "
                          + Say.volume(pile.load().value(), plan.info().units())
                          + " does not fit on "
                          + name
                          + ".",
                      "Give a larger spot, or ask for smaller loads.")
                  .marking(pile.ground().minus(pile.spot().shape())));
        }
        if (pile.spot().access().compareTo(TRUCK_WIDTH) < 0) {
          findings.add(
              finding(
                  pile,
                  "materials.truck-way",
                  "The way to " + name + " is " + Say.depth(pile.spot().access()) + " wide.",
                  "A truck needs at least 8 ft (2.4 m); choose another spot or carry from the"
                      + " street where that is allowed."));
        }
        overhead(plan, pile, name).forEach(findings::add);
        offTheLot(plan, pile, name).forEach(findings::add);
      }
      return findings;
    }

    private static List<Finding> overhead(Plan plan, TipPile pile, String name) {
      List<Finding> findings = new ArrayList<>();
      for (Element e : plan.elements()) {
        boolean tree = e instanceof Element.Tree;
        boolean utility = e instanceof Element.Utility;
        Shape reach = utility ? e.shape().grown(((Element.Utility) e).clearance()) : e.shape();
        if ((tree || utility) && reach.overlaps(pile.spot().shape())) {
          findings.add(
              finding(
                  pile,
                  "materials.pile-overhead",
                  e.id() + " crosses " + name + ".",
                  utility
                      ? "A raised truck bed must stay clear of overhead lines, and heaps off buried"
                          + " ones: ask the utility, or move the spot."
                      : "A raised truck bed needs about 20 ft of room: move the spot."));
        }
      }
      return findings;
    }

    private static List<Finding> offTheLot(Plan plan, TipPile pile, String name) {
      if (plan.lot().isEmpty()) {
        return List.of();
      }
      Shape outside = pile.ground().minus(plan.lot().get().shape());
      if (outside.isEmpty()) {
        return List.of();
      }
      return List.of(
          finding(
                  pile,
                  "materials.pile-outside",
                  "The heap on " + name + " lies partly outside the lot.",
                  "Keep the public walk and the gutter free; ask the town before using the street.")
              .marking(outside));
    }

    private static Finding finding(TipPile pile, String rule, String text, String advice) {
      Finding f = Finding.of(rule, Severity.WARNING, text, advice, TRUCK);
      return new Finding(
          f.rule(),
          f.severity(),
          f.element(),
          pile.spot().place(),
          f.text(),
          f.advice(),
          f.source(),
          f.where());
    }
  }

  /** Cardboard needs months before roots of annuals pass it. */
  private static final class RestingTime implements Check {
    private static final Source SOURCE =
        Source.read(
            "Create vegetable beds with lasagna mulching",
            "Oregon State University Extension",
            2009,
            "7 May: six months or longer");
    private static final int MONTHS = 6;

    @Override
    public String id() {
      return "materials.resting-time";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.PHASES, MaterialFacts.SURFACES);
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      boolean annual =
          facts.all(MaterialFacts.SURFACES).stream()
              .anyMatch(s -> s.kind() == SurfaceKind.ANNUAL_BED && s.sheets().isPresent());
      Optional<LocalDate> laid = date(facts, "sheet");
      Optional<LocalDate> planted = date(facts, "plant");
      if (!annual || laid.isEmpty() || planted.isEmpty()) {
        return List.of();
      }
      if (!planted.get().isBefore(laid.get().plusMonths(MONTHS))) {
        return List.of();
      }
      return List.of(
          Finding.of(
              "materials.resting-time",
              Severity.NOTE,
              "Annual beds are planted on "
                  + planted.get()
                  + ", less than six months after the cardboard is laid ("
                  + laid.get()
                  + ").",
              "Cut holes for transplants, or lay in autumn for planting in spring.",
              SOURCE));
    }

    private static Optional<LocalDate> date(Facts facts, String phase) {
      return facts.all(MaterialFacts.PHASES).stream()
          .filter(t -> t.phase().id().equals(phase))
          .findFirst()
          .flatMap(t -> t.start());
    }
  }
}
