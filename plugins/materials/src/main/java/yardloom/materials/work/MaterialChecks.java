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
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.materials.calc.MulchLimits;
import yardloom.materials.model.LengthSetting;
import yardloom.materials.model.MulchSettings;
import yardloom.materials.model.SurfaceKind;

/** The plugin's checks that need little more than the settings. */
public final class MaterialChecks {
  private MaterialChecks() {}

  /** All of them. */
  public static List<Check> all() {
    return List.of(new Clearances(), new TipPileCheck(), new RestingTime(), new PlantingDayCheck());
  }

  /** Whether chips lie around any tree. */
  static boolean hasRings(Facts facts) {
    return facts.all(MaterialFacts.SURFACES).stream()
        .anyMatch(s -> s.kind() == SurfaceKind.TREE_RING);
  }

  /** Bare ground at trunks and walls, and depth over roots. */
  private static final class Clearances implements Check {
    @Override
    public String id() {
      return "materials.clearances";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.SURFACES);
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      MulchSettings settings = MulchSettings.of(plan);
      List<Finding> findings = new ArrayList<>();
      Length trunk = settings.length(LengthSetting.TRUNK_GAP).value();
      if (!plan.all(Element.Tree.class).isEmpty() && !MulchLimits.trunkGapIsEnough(trunk)) {
        findings.add(
            Finding.of(
                "materials.trunk-gap",
                Severity.WARNING,
                "Chips come within "
                    + Say.depthFor(trunk, plan.info().units())
                    + " of tree trunks.",
                "Keep chips at least "
                    + Say.depthFor(MulchLimits.TRUNK_GAP, plan.info().units())
                    + " off the bark.",
                MulchLimits.TREES));
      }
      Length ring = settings.length(LengthSetting.TREE_RING_MULCH).value();
      if (hasRings(facts) && MulchLimits.aroundTree(ring, false) == MulchLimits.Verdict.TOO_MUCH) {
        findings.add(
            Finding.of(
                "materials.tree-depth",
                Severity.WARNING,
                "Chips lie " + Say.depthFor(ring, plan.info().units()) + " deep over tree roots.",
                "Use 3 to 4 in (8 to 10 cm) on drained soil, 2 to 3 in (5 to 8 cm) on heavy soil.",
                MulchLimits.TREES));
      }
      Length wall = settings.length(LengthSetting.WALL_GAP).value();
      if (!plan.all(Element.Building.class).isEmpty() && !MulchLimits.wallGapIsEnough(wall)) {
        findings.add(
            Finding.of(
                "materials.wall-gap",
                Severity.WARNING,
                "Mulch comes within "
                    + Say.depthFor(wall, plan.info().units())
                    + " of the house wall.",
                "Keep "
                    + Say.depthFor(MulchLimits.WALL_GAP, plan.info().units())
                    + " bare along the foundation.",
                MulchLimits.HOUSES));
      }
      return findings;
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
