package yardloom.planting.suit.rule;

import java.util.Optional;
import yardloom.planting.suit.rule.LocalList.Kind;

/**
 * May the kind be planted where the yard lies, by the lists that its region gives?
 *
 * <p>References: as each list names them. A kind on no list is not known to be harmless there.
 */
public final class LocalListRule implements SuitRule {
  @Override
  public String id() {
    return "list";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<LocalList> prohibited = LocalList.with(plant.plant(), Kind.PROHIBITED, yard.plan());
    if (prohibited.isPresent()) {
      return Optional.of(
          reason(
              Suits.DOES_NOT_FIT,
              "it is on a list of plants that may not be planted here",
              "plant another kind; ask whoever keeps the list whether its variety is exempt",
              prohibited.get()));
    }
    return LocalList.with(plant.plant(), Kind.WATCHED, yard.plan())
        .map(
            list ->
                reason(
                    Suits.FITS_IF,
                    "it is on a list of plants that spread from gardens here",
                    "take a kind that stays, or cut it before its seeds are ripe and dig out what"
                        + " runs",
                    list));
  }

  private Reason reason(Suits suits, String text, String todo, LocalList list) {
    return new Reason(
        id(), suits, text + list.say().map(s -> ": " + s).orElse(""), todo, list.source());
  }
}
