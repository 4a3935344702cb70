package yardloom.planting.suit.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.traits.Hazard;

/**
 * Does the kind harm those who live with the garden, as the plan names them?
 *
 * <p>References: as the rows of {@link Hazard} say. A kind without a row is not known to be
 * harmless.
 */
public final class HazardRule implements SuitRule {
  @Override
  public String id() {
    return "household";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    if (yard.household().isEmpty()) {
      return Optional.empty();
    }
    Household who = yard.household().get();
    List<Hazard> found =
        Hazard.of(plant.plant()).stream()
            .filter(h -> h.to() == Hazard.Whom.CHILDREN ? who.children() : who.pets())
            .toList();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    String text =
        found.stream()
            .map(h -> Choices.text(h.to()) + ": " + h.part())
            .collect(Collectors.joining("; "));
    Source source = found.get(0).source();
    return Optional.of(
        new Reason(
            id(),
            Suits.FITS_IF,
            "may harm " + text,
            "plant it out of their reach or behind a fence, pick up what falls, or leave it"
                + " out; show children what is eaten and what is not",
            source));
  }
}
