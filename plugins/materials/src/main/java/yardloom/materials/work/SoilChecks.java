package yardloom.materials.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;
import yardloom.materials.calc.LeadScreening;
import yardloom.materials.calc.MulchLimits;
import yardloom.materials.calc.ProfileWater;
import yardloom.materials.model.LengthSetting;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.MulchSettings;
import yardloom.materials.model.SoilTest;
import yardloom.materials.model.Weed;

/** Checks of what the plan says about its soil and weeds. */
public final class SoilChecks {
  private SoilChecks() {}

  /** All of them. */
  public static List<Check> all() {
    return List.of(new Lead(), new Weeds(), new HeavySoil());
  }

  /** Lead against the screening levels. */
  private static final class Lead implements Check {
    @Override
    public String id() {
      return "materials.lead";
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      Optional<SoilTest> test = plan.attributes().get(MaterialKeys.SOIL_TEST);
      if (test.isEmpty() || test.get().lead().isEmpty()) {
        return List.of();
      }
      double ppm = test.get().lead().getAsDouble();
      LeadScreening.Outcome outcome = LeadScreening.of(ppm, test.get().otherSources());
      String found = "The soil holds " + Say.number(ppm) + " ppm of lead: ";
      return switch (outcome) {
        case BELOW -> List.of();
        case BELOW_UNLESS_OTHER_SOURCES ->
            List.of(
                finding(
                    test.get(),
                    Severity.NOTE,
                    found
                        + "below 200 ppm, but above 100 ppm, which holds where there are other"
                        + " sources of lead."));
        case ABOVE ->
            List.of(
                finding(
                    test.get(), Severity.WARNING, found + "above the screening level of 2024."));
        case ABOVE_FORMER_LEVEL ->
            List.of(
                finding(
                    test.get(),
                    Severity.ERROR,
                    found + "above even the level before 2024 (400 ppm)."));
      };
    }

    private static Finding finding(SoilTest test, Severity severity, String text) {
      return Finding.of(
              "materials.lead",
              severity,
              text,
              "Ask the local health department. Grow food in raised beds of clean soil, keep bare"
                  + " soil covered, wash hands and harvest; screening levels are not clean-up"
                  + " standards.",
              LeadScreening.SOURCE)
          .at(test.place());
    }
  }

  /** Weeds that outlast sheet mulch. */
  private static final class Weeds implements Check {
    @Override
    public String id() {
      return "materials.weeds";
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      List<Finding> findings = new ArrayList<>();
      for (var entry : plan.attributes().all(MaterialKeys.WEED)) {
        findings.add(finding(entry.value(), "on the site", plan.info().units()).at(entry.place()));
      }
      for (Element.Bed bed : plan.all(Element.Bed.class)) {
        for (var entry : bed.attributes().all(MaterialKeys.WEED)) {
          findings.add(
              finding(entry.value(), "in " + bed.id(), plan.info().units())
                  .about(bed.id(), entry.place()));
        }
      }
      return findings;
    }

    private static Finding finding(Weed weed, String where, UnitSystem units) {
      return Finding.of(
          "materials.weed",
          Severity.WARNING,
          weed.name() + " grows " + where + " and outlasts a plain sheet mulch.",
          "Before laying: "
              + weed.advice()
              + ". The take-off counts "
              + weed.layers()
              + " layers of cardboard and "
              + Say.depth(weed.extraChips(), units)
              + " more chips there.",
          weed.source());
    }
  }

  /** Chips over roots and water on soil that drains slowly. */
  private static final class HeavySoil implements Check {
    private static final Source CARDBOARD =
        Source.read(
            "Sheet mulching, aka lasagna composting",
            "Oregon State University Extension",
            0,
            "caution on cardboard");

    @Override
    public String id() {
      return "materials.heavy-soil";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(YardFacts.SOIL, MaterialFacts.SURFACES);
    }

    @Override
    public List<Finding> run(Plan plan, Facts facts) {
      Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
      if (soil.isEmpty()) {
        return List.of();
      }
      MulchSettings settings = MulchSettings.of(plan);
      List<Finding> findings = new ArrayList<>();
      var ring = settings.length(LengthSetting.TREE_RING_MULCH).value();
      if (soil.get().heavy()
          && MaterialChecks.hasRings(facts)
          && MulchLimits.aroundTree(ring, true) == MulchLimits.Verdict.TOO_MUCH) {
        findings.add(
            Finding.of(
                "materials.heavy-soil-depth",
                Severity.WARNING,
                "Chips lie "
                    + Say.depthFor(ring, plan.info().units())
                    + " deep over tree roots in heavy soil.",
                "Use 2 to 3 in (5 to 8 cm) there: treeRingMulch: 3.inch or 8.cm.",
                MulchLimits.TREES));
      }
      boolean slow =
          soil.get()
              .intakePerHour()
              .map(i -> ProfileWater.intakeClass(i.value().millimetres()))
              .filter(c -> c == ProfileWater.IntakeClass.SLOW)
              .isPresent();
      if (slow && !settings.chipsOnly()) {
        findings.add(
            Finding.of(
                "materials.slow-soil",
                Severity.NOTE,
                "Water enters this soil slowly, and cardboard slows it further.",
                "Loosen with a fork before laying, or use chips alone (chipsOnly: true).",
                CARDBOARD));
      }
      return findings;
    }
  }
}
