package yardloom.materials.work;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.BulkVolume;
import yardloom.materials.calc.Fertilizer;
import yardloom.materials.calc.OrganicMatter;
import yardloom.materials.calc.PhAmendment;
import yardloom.materials.calc.PhAmendment.Doses;
import yardloom.materials.calc.PhAmendment.Ground;
import yardloom.materials.calc.TextureRule;
import yardloom.materials.calc.Totals;
import yardloom.materials.model.AmendmentDose;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.SoilGiven;
import yardloom.materials.model.SoilTest;
import yardloom.materials.model.TextureClass;

/** Gives lime, sulfur, nitrogen and compost for the beds, where a soil test asks for them. */
public final class AmendmentCalculator implements Calculator {
  private static final double SOIL_KG_M3 = 1300;
  private static final double COMPOST_ORGANIC = 0.5;
  private static final double COMPOST_MOISTURE = 0.45;

  @Override
  public String id() {
    return "materials.amendments";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MaterialFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(MaterialFacts.AMENDMENTS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Derived<Area> beds =
        Totals.area(
            in.all(MaterialFacts.SURFACES).stream()
                .filter(s -> s.of().kind() == ElementKind.BED)
                .toList());
    Optional<SoilTest> test = plan.attributes().get(MaterialKeys.SOIL_TEST);
    if (test.isEmpty() || beds.value().si() == 0) {
      return;
    }
    Optional<SoilGiven> soil = LocalData.of(plan).soil();
    TextureClass texture =
        soil.map(s -> TextureRule.classify(s.sand(), s.clay())).orElse(TextureClass.LOAM);
    acidity(test.get(), texture, beds, out);
    nitrogen(test.get(), beds, out);
    soil.ifPresent(s -> organic(plan, test.get(), s, beds, out));
  }

  private static void acidity(SoilTest test, TextureClass texture, Derived<Area> beds, Sink out) {
    if (test.ph().isEmpty() || test.wantedPh().isEmpty()) {
      return;
    }
    double now = test.ph().getAsDouble();
    double wanted = test.wantedPh().getAsDouble();
    if (wanted < now) {
      Ground ground =
          texture.isHeavy() ? Ground.CLAY : texture.isCoarse() ? Ground.SAND : Ground.SILT_LOAM;
      Doses doses = PhAmendment.sulfur(now, wanted, ground, beds.value());
      Derived.Builder why =
          Derived.by("2 lb per 0.1 pH and 1000 sq ft, by texture", PhAmendment.SULFUR)
              .from("pH", now, test.place())
              .from("wanted pH", wanted, test.place())
              .from("texture", texture.title())
              .from("beds", beds);
      dose(out, "elemental sulfur", why.gives(doses.first()), "first; work into the top soil");
      if (doses.later().si() > 0) {
        dose(out, "elemental sulfur", why.gives(doses.later()), "after a retest in three months");
      }
    } else if (wanted > now) {
      String row =
          texture.isCoarse() ? "sandy loam" : texture.isHeavy() ? "heavy clay loam" : "medium loam";
      Mass unit = PhAmendment.perUnit("lime", row, beds.value());
      dose(
          out,
          "ground limestone",
          Derived.by("lime per pH unit × units", PhAmendment.perUnitSource(row))
              .from("lime for one unit on the beds", unit)
              .from("pH", now, test.place())
              .from("wanted pH", wanted, test.place())
              .from("beds", beds)
              .gives(unit.times(wanted - now)),
          "in autumn; a buffer pH from the laboratory goes before this");
    }
  }

  private static void nitrogen(SoilTest test, Derived<Area> beds, Sink out) {
    if (test.nitrogen().isEmpty()) {
      return;
    }
    Derived<Mass> wanted =
        Derived.by("nitrogen = rate × beds", Fertilizer.SOURCE)
            .from("rate", test.nitrogen().get(), test.place())
            .from("over", test.nitrogenOver(), test.place())
            .from("beds", beds)
            .gives(test.nitrogen().get().times(beds.value().ratioTo(test.nitrogenOver())));
    dose(out, "nitrogen", wanted, "a year, in two or three doses");
    test.grade()
        .ifPresent(
            grade ->
                dose(
                    out,
                    "fertilizer " + grade,
                    Derived.by("product = nitrogen / share of nitrogen", Fertilizer.SOURCE)
                        .from("nitrogen", wanted)
                        .from("grade", grade, test.place())
                        .gives(
                            Fertilizer.productFor(wanted.value(), Fertilizer.Grade.parse(grade))),
                    "brings that nitrogen"));
  }

  private static void organic(
      Plan plan, SoilTest test, SoilGiven soil, Derived<Area> beds, Sink out) {
    if (test.wantedOrganic().isEmpty() || test.wantedOrganic().getAsDouble() <= soil.organic()) {
      return;
    }
    double raise = (test.wantedOrganic().getAsDouble() - soil.organic()) / 100;
    var density = LocalData.of(plan).poundsPerCubicYard("compost");
    double kgM3 = BulkVolume.mass(Volume.cubicMetres(1), density.likely()).kilograms();
    Volume volume =
        OrganicMatter.compostFor(
            beds.value(),
            test.mixDepth(),
            SOIL_KG_M3,
            raise,
            new OrganicMatter.Compost(kgM3, COMPOST_ORGANIC, COMPOST_MOISTURE));
    Source assumed =
        Source.memory(
            "Soil 1300 kg/m³; compost half organic, 45 % water", "recalled typical values", 0, "");
    dose(
        out,
        "compost to mix in",
        Derived.by(
                "A × d × soil density × raise / (compost density × organic × dry)",
                OrganicMatter.SOURCE)
            .from("beds", beds)
            .from("d, mixing depth", test.mixDepth(), test.place())
            .from("raise, share of soil mass", raise, test.place())
            .from("soil density, kg/m³", Derived.by("typical", assumed).gives(SOIL_KG_M3))
            .from("compost density, kg/m³", kgM3)
            .from("organic share of dry compost", COMPOST_ORGANIC)
            .from("dry share of compost", 1 - COMPOST_MOISTURE)
            .gives(volume),
        "once, where beds are dug at all; decay takes part of it each year");
  }

  private static void dose(Sink out, String item, Derived<?> amount, String when) {
    out.give(MaterialFacts.AMENDMENTS, new AmendmentDose(item, amount, when));
  }
}
