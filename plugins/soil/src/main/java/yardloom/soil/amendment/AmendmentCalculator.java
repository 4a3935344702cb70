package yardloom.soil.amendment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkDensity;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.region.Spread;
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
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.soil.amendment.formula.BufferLime;
import yardloom.soil.amendment.formula.Fertilizer;
import yardloom.soil.amendment.formula.LimeByTexture;
import yardloom.soil.amendment.formula.OrganicMatter;
import yardloom.soil.amendment.formula.PhAmendment;
import yardloom.soil.amendment.formula.PhAmendment.Doses;
import yardloom.soil.amendment.formula.PhAmendment.Ground;
import yardloom.soil.compost.formula.BulkMass;
import yardloom.soil.lab.SoilTest;
import yardloom.soil.texture.SoilGiven;
import yardloom.soil.texture.formula.TextureClass;
import yardloom.soil.texture.formula.TextureRule;

/** Gives lime, sulfur, nitrogen and compost for the beds, where a soil test asks for them. */
public final class AmendmentCalculator implements Calculator {
  private static final Area THOUSAND = Area.squareFeet(1000);
  private static final double SOIL_KG_M3 = 1300;
  private static final double COMPOST_ORGANIC = 0.5;
  private static final double COMPOST_MOISTURE = 0.45;

  @Override
  public String id() {
    return "soil.amendments";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.BULK_DENSITIES, YardFacts.STANDS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.MULCH_TOTALS, SoilGiven.FACT);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(AmendmentDose.FACT, YardFacts.BILL, YardFacts.JOBS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<Derived<Area>> mulched = in.find(YardFacts.MULCH_TOTALS).map(MulchTotals::beds);
    Optional<SoilTest> test = plan.attributes().get(SoilTest.KEY);
    if (test.isEmpty() || mulched.filter(a -> a.value().si() > 0).isEmpty()) {
      return;
    }
    Derived<Area> beds = mulched.get();
    Optional<SoilGiven> soil = in.find(SoilGiven.FACT);
    TextureClass texture =
        soil.map(s -> TextureRule.classify(s.sand(), s.clay())).orElse(TextureClass.LOAM);
    acidity(test.get(), texture, beds, out);
    nitrogen(plan, test.get(), beds, in, out);
    soil.ifPresent(s -> organic(in, test.get(), s, beds, out));
  }

  private static void acidity(SoilTest test, TextureClass texture, Derived<Area> beds, Sink out) {
    if (test.acidity().ph().isEmpty() || test.acidity().wanted().isEmpty()) {
      return;
    }
    double now = test.acidity().ph().getAsDouble();
    double wanted = test.acidity().wanted().getAsDouble();
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
      Derived<Mass> first = why.gives(doses.first());
      dose(out, "elemental sulfur", first, "first; work into the top soil");
      spread(out, "elemental sulfur", first, beds);
      if (doses.later().si() > 0) {
        dose(out, "elemental sulfur", why.gives(doses.later()), "after a retest in three months");
      }
    } else if (wanted > now && test.acidity().buffer().isPresent()) {
      double buffer = test.acidity().buffer().getAsDouble();
      Derived<Mass> pure =
          Derived.by(
                  "2000 lb an acre × 4 × (6.6 − buffer pH) × (wanted − pH) / (6.6 − pH)",
                  BufferLime.SOURCE)
              .from("buffer pH", buffer, test.place())
              .from("pH", now, test.place())
              .from("wanted pH", wanted, test.place())
              .from("beds", beds)
              .gives(BufferLime.lime(now, wanted, buffer, beds.value()));
      lime(
          test,
          pure,
          "in autumn, by the buffer pH; half now and half next year if it is much",
          beds,
          out);
    } else if (wanted > now) {
      LimeByTexture.Ground ground = LimeByTexture.ground(texture);
      Mass lime = LimeByTexture.lime(now, wanted, ground, THOUSAND);
      Derived<Mass> pure =
          Derived.by("lime on 1000 sq ft × beds / 1000 sq ft", LimeByTexture.source(ground))
              .from("pH", now, test.place())
              .from("wanted pH", wanted, test.place())
              .from("texture", texture.title())
              .from("lime on 1000 sq ft", lime)
              .from("beds", beds)
              .gives(lime.times(beds.value().ratioTo(THOUSAND)));
      lime(test, pure, "in autumn; a buffer pH from the laboratory goes before this", beds, out);
    }
  }

  private static void lime(
      SoilTest test, Derived<Mass> pure, String when, Derived<Area> beds, Sink out) {
    Derived<Mass> product =
        test.acidity().limePurity() == 100
            ? pure
            : Derived.by("lime × 100 / calcium carbonate equivalent", PhAmendment.PURITY)
                .from("pure lime", pure)
                .from("equivalent, percent", test.acidity().limePurity(), test.place())
                .gives(PhAmendment.correctedForPurity(pure.value(), test.acidity().limePurity()));
    dose(out, "ground limestone", product, when);
    spread(out, "ground limestone", product, beds);
  }

  /** What is spread on the mown ground before it is soaked and covered, bought and worked. */
  private static void spread(Sink out, String item, Derived<Mass> amount, Derived<Area> beds) {
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.SOIL,
            WorkPhase.SOAK,
            item,
            Optional.empty(),
            Optional.empty(),
            amount,
            amount,
            "as weighed; bags hold 40 or 50 lb"));
    out.give(YardFacts.JOBS, new Job(WorkTask.SPREAD_AMENDMENT, WorkPhase.SOAK, beds));
  }

  private static void nitrogen(Plan plan, SoilTest test, Derived<Area> beds, Facts in, Sink out) {
    Optional<Derived<Mass>> found = test.feeding().byCrop() ? byCrop(plan, in) : byRate(test, beds);
    if (found.isEmpty()) {
      return;
    }
    Derived<Mass> wanted = found.get();
    dose(
        out,
        test.feeding().byCrop() ? "nitrogen, by crop" : "nitrogen",
        wanted,
        "a year, in two or three doses");
    test.feeding()
        .grade()
        .ifPresent(
            grade ->
                dose(
                    out,
                    "fertilizer " + grade,
                    Derived.by("product = nitrogen / (percent N / 100)", Fertilizer.SOURCE)
                        .from("nitrogen", wanted)
                        .from("grade", grade, test.place())
                        .from("percent N", Fertilizer.Grade.parse(grade).nitrogen())
                        .gives(
                            Fertilizer.productFor(wanted.value(), Fertilizer.Grade.parse(grade))),
                    "brings that nitrogen"));
  }

  private static Optional<Derived<Mass>> byRate(SoilTest test, Derived<Area> beds) {
    return test.feeding()
        .nitrogen()
        .map(
            rate ->
                Derived.by("nitrogen = rate × beds / over", Fertilizer.SOURCE)
                    .from("rate", rate, test.place())
                    .from("over", test.feeding().over(), test.place())
                    .from("beds", beds)
                    .gives(rate.times(beds.value().ratioTo(test.feeding().over()))));
  }

  /** Over the ground that each crop of an annual bed takes. */
  private static Optional<Derived<Mass>> byCrop(Plan plan, Facts in) {
    List<Stand> crops =
        in.all(YardFacts.STANDS).stream().filter(s -> isAnnual(plan, s.in())).toList();
    if (crops.isEmpty()) {
      return Optional.empty();
    }
    Derived.Builder why =
        Derived.by(
            "sum over crops of rate × ground / 1000 sq ft",
            NitrogenData.of(crops.get(0).plant()).source());
    Mass sum = Mass.ZERO;
    for (Stand crop : crops) {
      Mass rate = NitrogenData.of(crop.plant()).per1000SquareFeet();
      why.from("rate of " + crop.plant(), rate)
          .from(
              "ground of " + crop.plant() + " in " + crop.in(), crop.placed().area(), crop.place());
      sum = sum.plus(rate.times(crop.placed().area().ratioTo(THOUSAND)));
    }
    return Optional.of(why.gives(sum));
  }

  private static boolean isAnnual(Plan plan, ElementId id) {
    return plan.element(id)
        .filter(e -> e instanceof Element.Bed bed && bed.use() == Element.BedUse.ANNUAL)
        .isPresent();
  }

  private static void organic(
      Facts in, SoilTest test, SoilGiven soil, Derived<Area> beds, Sink out) {
    Optional<Spread> density =
        in.all(YardFacts.BULK_DENSITIES).stream()
            .filter(d -> d.material().equals(Material.COMPOST))
            .map(BulkDensity::poundsPerCubicYard)
            .findFirst();
    if (density.isEmpty()) {
      return;
    }
    if (test.organic().wanted().isEmpty()
        || test.organic().wanted().getAsDouble() <= soil.organic()) {
      return;
    }
    double raise = (test.organic().wanted().getAsDouble() - soil.organic()) / 100;
    double kgM3 = BulkMass.of(Volume.cubicMetres(1), density.get().likely()).kilograms();
    Volume volume =
        OrganicMatter.compostFor(
            beds.value(),
            test.organic().mixDepth(),
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
                "beds × d × soil density × raise / (compost density × organic × dry)",
                OrganicMatter.SOURCE)
            .from("beds", beds)
            .from("d, mixing depth", test.organic().mixDepth(), test.place())
            .from("raise, share of soil mass", raise, test.place())
            .from("soil density, kg/m³", Derived.by("typical", assumed).gives(SOIL_KG_M3))
            .from("compost density, kg/m³", kgM3)
            .from("organic share of dry compost", COMPOST_ORGANIC)
            .from("dry share of compost", 1 - COMPOST_MOISTURE)
            .gives(volume),
        "once, where beds are dug at all; decay takes part of it each year");
  }

  private static void dose(Sink out, String item, Derived<?> amount, String when) {
    out.give(AmendmentDose.FACT, new AmendmentDose(item, amount, when));
  }
}
