package yardloom.materials.surface;

import java.util.List;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * In which lifts the chips of one surface come, from the ground up.
 *
 * <p>Cardboard is covered the day it is laid, and nothing is planted or laid through chips that
 * would have to be parted again. So paths and ground mulched whole, where nothing is planted, get
 * all of theirs with the cardboard; ground that compost covers, and ground without cardboard, gets
 * all of its chips last, after planting and dripline; cardboard without compost gets a first lift
 * of 2 in (at most half the depth) with it and the rest last. Last is with the finish, or, where
 * plants of another season come, after those. Lifts share the volume as they share the depth, since
 * both taper over the same width, and add up to it.
 *
 * <p>References: common practice of sheet mulching; no publication is needed.
 */
final class ChipLifts {
  /** What holds cardboard down until the finish lift. */
  private static final Length HOLDING = Length.inches(2);

  private static final Source PRACTICE =
      Source.commonPractice("2 in of chips hold cardboard down until planting is done");
  private static final Source SHARE = Source.commonPractice("lifts of one layer, of like taper");

  private ChipLifts() {}

  /**
   * The lifts of chips.
   *
   * @param covered whether compost covers the ground below
   * @param last the phase of what comes last
   */
  static List<LaidLayer> of(
      SurfaceKind kind,
      boolean sheeted,
      boolean covered,
      WorkPhase last,
      Derived<Length> depth,
      Derived<Volume> volume) {
    if (kind == SurfaceKind.PATH || kind == SurfaceKind.MULCHED_GROUND) {
      return List.of(LaidLayer.bulk(Material.WOOD_CHIPS, WorkPhase.SHEET, depth, volume));
    }
    if (!sheeted || covered) {
      return List.of(LaidLayer.bulk(Material.WOOD_CHIPS, last, depth, volume));
    }
    Derived<Length> first =
        Derived.by("min(what holds cardboard, depth / 2)", PRACTICE)
            .from("what holds cardboard", HOLDING)
            .from("depth", depth)
            .gives(HOLDING.min(depth.value().div(2)));
    Derived<Length> rest =
        Derived.by("depth − first lift", PRACTICE)
            .from("depth", depth)
            .from("first lift", first)
            .gives(depth.value().minus(first.value()));
    return List.of(lift(WorkPhase.SHEET, first, depth, volume), lift(last, rest, depth, volume));
  }

  private static LaidLayer lift(
      WorkPhase phase, Derived<Length> lift, Derived<Length> depth, Derived<Volume> volume) {
    return LaidLayer.bulk(
        Material.WOOD_CHIPS,
        phase,
        lift,
        Derived.by("volume × lift / depth", SHARE)
            .from("volume", volume)
            .from("lift", lift)
            .from("depth", depth)
            .gives(volume.value().times(lift.value().ratioTo(depth.value()))));
  }
}
