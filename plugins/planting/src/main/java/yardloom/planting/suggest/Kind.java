package yardloom.planting.suggest;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.planting.care.CareGroups;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.traits.ColdLimits;
import yardloom.planting.traits.Growth;
import yardloom.planting.traits.SoilNeed;
import yardloom.planting.traits.WaterClass;
import yardloom.planting.year.GrowingYear;

/**
 * A kind that may be suggested.
 *
 * @param months bits of the wished months in which it is picked, January the lowest
 * @param uses bits of {@link #USES} that it has
 * @param layer the bit of its layer
 * @param stays whether it stays for years
 * @param heldBack whether it is held back with a spade each year; the search asks it millions of
 *     times
 */
record Kind(Plant plant, int months, int uses, int layer, boolean stays, boolean heldBack) {
  /** What a bed should have besides food. */
  static final List<String> USES =
      List.of("nitrogen fixer", "insect plant", "mulch maker", "ground cover");

  /** What a kind of each use does. */
  static final List<String> DOES =
      List.of("fixes nitrogen", "feeds insects", "makes mulch", "covers the ground");

  /** What winters outdoors only from this zone on is sold as tender (common practice). */
  static final int TENDER_ZONE = 8;

  private static final String RUNS = "spreading";
  private static final String LOW = "low";

  static Kind of(
      Plant plant,
      Optional<GrowingYear> year,
      Optional<ClimateNormals> climate,
      Set<Month> wished) {
    int months = 0;
    if (year.isPresent() && HarvestSeason.of(plant).isPresent()) {
      List<Double> shares =
          HarvestSeason.of(plant, year.get(), climate)
              .get()
              .shares(year.get().begins().value(), HarvestSeason.rests(plant, climate));
      for (Month month : wished) {
        months |= shares.get(month.getValue() - 1) > 0 ? 1 << (month.getValue() - 1) : 0;
      }
    }
    int uses = 0;
    for (int i = 0; i < USES.size(); i++) {
      uses |= Growth.roles(plant).contains(USES.get(i)) ? 1 << i : 0;
    }
    return new Kind(
        plant,
        months,
        uses,
        1 << Growth.of(plant).layer().ordinal(),
        Growth.of(plant).life() == Growth.Life.PERENNIAL,
        CareGroups.isHeldBack(plant));
  }

  /** Whether it stays for years and does so only where winters are mild. */
  boolean isTender() {
    return stays && ColdLimits.of(plant).filter(l -> l.coldest() >= TENDER_ZONE).isPresent();
  }

  /** Whether it spreads from below into what stands beside it. */
  boolean runs() {
    return plant.mulch().group().equals(RUNS);
  }

  /**
   * Whether both may share a bed: of different genera (pests and viruses pass between relatives),
   * under one watering, in one soil, no runner beside a low kind, which it smothers, or beside
   * another runner, and none that is held back with a spade beside what stays.
   */
  boolean agreesWith(Kind other) {
    return !plant.genus().equals(other.plant.genus())
        && water(plant).sharesWith(water(other.plant))
        && soilInCommon(plant, other.plant)
        && !overruns(other)
        && !other.overruns(this);
  }

  private boolean overruns(Kind other) {
    return runs() && (other.runs() || other.isLow()) || heldBack && other.stays;
  }

  private boolean isLow() {
    return plant.mulch().group().equals(LOW);
  }

  private static WaterClass water(Plant plant) {
    return WaterClass.of(plant).orElseThrow().of();
  }

  private static boolean soilInCommon(Plant a, Plant b) {
    SoilNeed one = SoilNeed.of(a).orElseThrow();
    SoilNeed two = SoilNeed.of(b).orElseThrow();
    return one.lowPh() <= two.highPh() && two.lowPh() <= one.highPh();
  }
}
