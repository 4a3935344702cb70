package yardloom.work.phase;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.Stand;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;

/** What a phase finds at the places of plants. */
enum PlantedGround {
  /** Cardboard, with what covers it. */
  CARDBOARD,
  /** Compost or chips alone. */
  LOOSE,
  /** Nothing yet: all that comes there comes after planting. */
  BARE,
  /** Rows of seed, which what the phase lays would bury. */
  SOWN;

  private static final Set<SurfaceKind> BEDS =
      Set.of(SurfaceKind.PERENNIAL_BED, SurfaceKind.ANNUAL_BED);

  /**
   * What lies at the places of all that is planted in {@code phase}, or for the phase that covers
   * the ground, of all that is planted at all and in beds whose plants the plan leaves open.
   */
  static Set<PlantedGround> of(WorkPhase phase, List<Stand> stands, List<MulchSurface> surfaces) {
    Set<PlantedGround> ground = EnumSet.noneOf(PlantedGround.class);
    if (phase == WorkPhase.SHEET) {
      surfaces.stream().filter(s -> BEDS.contains(s.kind())).forEach(s -> ground.add(of(s)));
    }
    for (Stand stand : stands) {
      boolean isNew = !stand.planted().stands() && !stand.follows();
      if (isNew && (phase == WorkPhase.SHEET || stand.planted().phase() == phase)) {
        ground.add(under(stand, surfaces));
      }
      if (isNew && stand.placed().drills().isPresent() && isCoveredLast(stand, phase, surfaces)) {
        ground.add(SOWN);
      }
    }
    return ground;
  }

  private static boolean isCoveredLast(Stand stand, WorkPhase phase, List<MulchSurface> surfaces) {
    return surfaces.stream()
        .filter(s -> s.of().equals(stand.in()) && !s.courses().isEmpty())
        .anyMatch(s -> s.courses().get(s.courses().size() - 1).phase() == phase);
  }

  private static PlantedGround under(Stand stand, List<MulchSurface> surfaces) {
    return surfaces.stream()
        .filter(s -> s.of().equals(stand.in()))
        .findFirst()
        .or(() -> surfaces.stream().filter(s -> holds(s, stand)).findFirst())
        .map(PlantedGround::of)
        .orElse(BARE);
  }

  /** Such as a tree without a ring of its own in ground that is mulched whole. */
  private static boolean holds(MulchSurface surface, Stand stand) {
    return stand.placed().at().stream().anyMatch(surface.shape()::contains);
  }

  private static PlantedGround of(MulchSurface surface) {
    if (!surface.lifts(Material.CARDBOARD).isEmpty()) {
      return CARDBOARD;
    }
    return surface.courses().stream().anyMatch(c -> c.phase() == WorkPhase.SHEET) ? LOOSE : BARE;
  }
}
