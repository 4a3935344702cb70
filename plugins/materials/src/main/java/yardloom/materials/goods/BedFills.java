package yardloom.materials.goods;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Carry;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SoilTop;
import yardloom.facts.work.Job;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.formula.Lumber;
import yardloom.materials.takeoff.Ordering;

/**
 * Soil that frames take below compost and chips, and raised beds below compost up to their soil
 * top: they stand on the ground, nothing is dug out. The cardboard lies under the soil, so both
 * come in one phase.
 */
final class BedFills {
  private static final String ITEM = "soil to fill frames and raised beds";
  private static final double SETTLING = 0.15;
  private static final Source FILL =
      Source.commonPractice("frames are filled to the top; loose soil settles by a seventh or so");

  private BedFills() {}

  static void of(Plan plan, Facts in, Sink out) {
    Map<ElementId, SoilTop> tops = new TreeMap<>();
    in.all(YardFacts.SOIL_TOPS).forEach(t -> tops.put(t.in(), t));
    Derived.Builder why = Derived.by("sum over beds of area × (height − layers)", FILL);
    Volume sum = Volume.ZERO;
    for (MulchSurface s : in.all(YardFacts.SURFACES)) {
      Length height = height(plan, s, tops);
      Length layers = layers(s, tops);
      Length fill = height.minus(layers).max(Length.ZERO);
      if (fill.metres() > 0) {
        Volume volume = s.area().value().deep(fill);
        sum = sum.plus(volume);
        why.from("area of " + s.of(), s.area())
            .from("height of " + s.of(), height, s.place())
            .from("layers of " + s.of() + ", compost and chips", layers);
        out.give(YardFacts.CARRIES, carry(s, height, layers, volume));
      }
    }
    if (sum.compareTo(Volume.ZERO) > 0) {
      order(plan, why.gives(sum), out);
    }
  }

  /** How high a bed is filled; zero where nothing is. */
  private static Length height(Plan plan, MulchSurface s, Map<ElementId, SoilTop> tops) {
    if (s.of().kind() == ElementKind.BED && tops.containsKey(s.of())) {
      return tops.get(s.of()).height();
    }
    Optional<Frame> frame = plan.element(s.of()).flatMap(bed -> bed.attributes().get(Frame.KEY));
    return frame.map(f -> Lumber.size(f.size()).width().times(f.courses())).orElse(Length.ZERO);
  }

  /** Compost, materials of the plan's own, and in frames the chips, which lie below the rim. */
  private static Length layers(MulchSurface s, Map<ElementId, SoilTop> tops) {
    Length compost = s.depth(Material.COMPOST).map(Derived::value).orElse(Length.ZERO);
    Length chips = s.depth(Material.WOOD_CHIPS).map(Derived::value).orElse(Length.ZERO);
    Length own =
        s.courses().stream()
            .filter(c -> c.material().isOwn())
            .map(c -> c.depth().orElseThrow().value())
            .reduce(Length.ZERO, Length::plus);
    return s.of().kind() == ElementKind.BED && tops.containsKey(s.of())
        ? compost.plus(own)
        : compost.plus(own).plus(chips);
  }

  private static Carry carry(MulchSurface s, Length height, Length layers, Volume volume) {
    Derived<Volume> loose =
        Derived.by("area × (height − layers) × (1 + settling)", FILL)
            .from("area", s.area())
            .from("height", height, s.place())
            .from("layers", layers)
            .from("settling", SETTLING)
            .gives(volume.times(1 + SETTLING));
    return new Carry(s.title(), s.shape(), ITEM, WorkPhase.SHEET, loose);
  }

  private static void order(Plan plan, Derived<Volume> exact, Sink out) {
    Derived<Double> settling = Derived.by("soil settles", FILL).gives(SETTLING);
    out.give(
        YardFacts.BILL,
        new BillLine(
            BillGroup.HARD_GOODS,
            WorkPhase.SHEET,
            ITEM,
            Optional.empty(),
            Optional.empty(),
            exact,
            Ordering.bulk(exact, settling, plan.info().units()),
            "15 % for settling"));
    out.give(YardFacts.JOBS, new Job(WorkTask.FILL_FRAMES, WorkPhase.SHEET, exact));
  }
}
