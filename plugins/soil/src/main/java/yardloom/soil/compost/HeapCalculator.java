package yardloom.soil.compost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.soil.compost.HeapPlan.Mix;
import yardloom.soil.compost.HeapPlan.Part;
import yardloom.soil.compost.formula.BulkMass;
import yardloom.soil.compost.formula.CarbonKept;
import yardloom.soil.compost.formula.CompostBay;
import yardloom.soil.compost.formula.CompostMix;
import yardloom.soil.compost.formula.CompostMix.Feed;
import yardloom.soil.compost.formula.CompostMix.Grade;
import yardloom.soil.compost.formula.FeedstockData;
import yardloom.soil.compost.formula.Shrinkage;

/** Gives how prunings and weeds become compost in the yard. */
public final class HeapCalculator implements Calculator {
  private static final double GOAL = 30;

  private static final String RATIO =
      "(sum over materials of Q × N × C:N × (100 − M)) / (sum over materials of Q × N × (100 − M))";
  private static final String MOISTURE =
      "(sum over materials of Q × M) / (sum over materials of Q)";

  @Override
  public String id() {
    return "soil.heap";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(HeapPlan.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Residue> residues =
        plan.attributes().all(Residue.KEY).stream().map(e -> e.value()).toList();
    if (!residues.isEmpty()) {
      out.give(HeapPlan.FACT, heap(residues));
    }
  }

  private static HeapPlan heap(List<Residue> residues) {
    List<Part> parts = new ArrayList<>();
    List<Feed> feeds = new ArrayList<>();
    for (Residue r : residues) {
      Part part = part(r);
      parts.add(part);
      feeds.add(Feed.shipped(r.material(), part.mass().value()));
    }
    double ratio = CompostMix.ratio(feeds);
    Optional<Part> partner = partner(parts, feeds, ratio);
    List<Feed> mix = new ArrayList<>(feeds);
    partner.ifPresent(p -> mix.add(Feed.shipped(p.material(), p.mass().value())));
    List<Part> all = new ArrayList<>(parts);
    partner.ifPresent(all::add);
    Derived<Volume> volume = volume(all);
    Derived<Mass> carbon =
        masses(
                all,
                "carbon = sum over materials of Q × N / 100 × C:N × (100 − M) / 100",
                CompostMix.SOURCE)
            .gives(CarbonKept.carbon(mix));
    Derived<Length> side =
        Derived.by("side = max(3 ft, min(5 ft, mix^(1 / 3)))", CompostBay.SOURCE)
            .from("mix", volume)
            .gives(CompostBay.side(volume.value()));
    return new HeapPlan(
        parts,
        new Mix(
            masses(parts, RATIO, CompostMix.SOURCE).gives(ratio),
            masses(parts, MOISTURE, CompostMix.SOURCE).gives(CompostMix.moisture(feeds))),
        partner,
        new Mix(
            masses(all, RATIO, CompostMix.SOURCE).gives(CompostMix.ratio(mix)),
            masses(all, MOISTURE, CompostMix.SOURCE).gives(CompostMix.moisture(mix))),
        new HeapPlan.Bays(
            volume,
            side,
            Derived.by("bays = mix / (side × side × side), rounded up", CompostBay.SOURCE)
                .from("mix", volume)
                .from("side", side)
                .gives(CompostBay.bays(volume.value()))),
        new HeapPlan.Season(
            finished(volume, Shrinkage.HOME_HEAP.high()),
            finished(volume, Shrinkage.HOME_HEAP.low()),
            kept(carbon, CarbonKept.SHARE.low()),
            kept(carbon, CarbonKept.SHARE.high())));
  }

  private static Part part(Residue r) {
    FeedstockData.Feedstock stock = FeedstockData.of(r.material());
    Derived<Volume> volume = Derived.given(r.volume(), r.material(), r.place());
    Derived<Mass> mass =
        Derived.by("pounds = volume in cu yd × pounds per cubic yard", stock.source())
            .from("volume", volume)
            .from("pounds per cubic yard", stock.poundsPerCubicYard())
            .gives(BulkMass.of(r.volume(), stock.poundsPerCubicYard()));
    boolean woody = stock.ratio() > 100;
    return new Part(r.material(), volume, mass, woody ? "chip; on paths and under mulch" : "bay");
  }

  /** Leaves for a mix too rich in nitrogen, grass for one too poor; none if the mix is good. */
  private static Optional<Part> partner(List<Part> heap, List<Feed> feeds, double ratio) {
    Grade grade = CompostMix.gradeRatio(ratio);
    if (grade == Grade.IDEAL) {
      return Optional.empty();
    }
    String name = ratio < GOAL ? "leaves" : "grass clippings";
    Feed unit = Feed.shipped(name, Mass.kilograms(1));
    Feed together = together(feeds);
    Mass mass = CompostMix.partnerForRatio(together, unit, GOAL);
    FeedstockData.Feedstock stock = FeedstockData.of(name);
    Derived.Builder why =
        Derived.by(
                "(sum over materials of Q × N × (R − C:N) × (100 − M)) / (n × (c − R) × (100 − m))",
                CompostMix.SOURCE)
            .from("R, goal for C:N", GOAL)
            .from("n, percent N of " + name, stock.nitrogen())
            .from("c, C:N of " + name, stock.ratio())
            .from("m, percent M of " + name, stock.moisture());
    heap.forEach(p -> inputs(why, p));
    Derived<Mass> wanted = why.gives(mass);
    Derived<Volume> volume =
        Derived.by("volume = mass in lb / pounds per cubic yard × 1 cu yd", stock.source())
            .from("mass", wanted)
            .from("pounds per cubic yard", stock.poundsPerCubicYard())
            .gives(Volume.cubicYards(mass.pounds() / stock.poundsPerCubicYard()));
    return Optional.of(new Part(name, volume, wanted, "bay, to bring the mix to C:N 30"));
  }

  /** One material with the wet mass, carbon, nitrogen and moisture of all. */
  private static Feed together(List<Feed> feeds) {
    double wet = 0;
    double dry = 0;
    double carbon = 0;
    double nitrogen = 0;
    for (Feed f : feeds) {
      double kg = f.wet().kilograms();
      double dryKg = kg * (1 - f.moisture() / 100);
      wet += kg;
      dry += dryKg;
      carbon += dryKg * f.carbon();
      nitrogen += dryKg * f.nitrogen();
    }
    return new Feed(
        "what there is", Mass.kilograms(wet), carbon / dry, nitrogen / dry, (1 - dry / wet) * 100);
  }

  private static Derived.Builder masses(List<Part> parts, String formula, Source source) {
    Derived.Builder why = Derived.by(formula, source);
    for (Part p : parts) {
      inputs(why, p);
    }
    return why;
  }

  private static void inputs(Derived.Builder why, Part p) {
    FeedstockData.Feedstock stock = FeedstockData.of(p.material());
    why.from("Q of " + p.material(), p.mass())
        .from("N of " + p.material() + ", percent", stock.nitrogen())
        .from("C:N of " + p.material(), stock.ratio())
        .from("M of " + p.material() + ", percent", stock.moisture());
  }

  private static Derived<Volume> volume(List<Part> parts) {
    Derived.Builder why = Derived.by("sum over loose volumes", BulkMass.SOURCE);
    Volume sum = Volume.ZERO;
    for (Part p : parts) {
      why.from(p.material(), p.volume());
      sum = sum.plus(p.volume().value());
    }
    return why.gives(sum);
  }

  private static Derived<Volume> finished(Derived<Volume> mix, double loss) {
    return Derived.by("finished = mix × (1 − loss)", Shrinkage.HOME_HEAP.source())
        .from("mix", mix)
        .from("loss", loss)
        .gives(Shrinkage.finished(mix.value(), loss));
  }

  private static Derived<Mass> kept(Derived<Mass> carbon, double share) {
    return Derived.by("kept after ten years = carbon × share", CarbonKept.SHARE.source())
        .from("carbon", carbon)
        .from("share", share)
        .gives(carbon.value().times(share));
  }
}
