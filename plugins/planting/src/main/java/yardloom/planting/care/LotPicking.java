package yardloom.planting.care;

import java.util.Optional;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.TurnDates.Dated;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.GrowingYear;

/** When each lot is picked: as the table of the harvest has it, in its turn where it has one. */
final class LotPicking {
  private final Facts in;
  private final GrowingYear year;
  private final Lots lots;

  LotPicking(Facts in, GrowingYear year, Lots lots) {
    this.in = in;
    this.year = year;
    this.lots = lots;
  }

  /** Empty for what is not picked. */
  Optional<HarvestSeason> of(Lot lot) {
    Optional<Turn> turn =
        lot.turn().map(Dated::turn).or(() -> lots.first(lot, in.get(TurnPlan.KEY)));
    return HarvestSeason.of(lot.plant(), year, in.find(YardFacts.CLIMATE), turn);
  }
}
