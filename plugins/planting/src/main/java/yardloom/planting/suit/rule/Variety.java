package yardloom.planting.suit.rule;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;

/**
 * What the plan says of the varieties of a tree or of the plants of a bed.
 *
 * @param of the catalogue name
 * @param names of the varieties, at least one
 * @param selfFruitful whether the nursery says that it bears alone
 * @param blooms when, beside others of its kind
 */
public record Variety(String of, List<String> names, boolean selfFruitful, Blooms blooms) {
  /** On trees and beds. */
  public static final AttributeKey<Variety> KEY =
      new AttributeKey<>("planting.variety", Variety.class);

  /** How a variety blooms beside the usual of its kind; a week earlier or later. */
  public enum Blooms {
    EARLY(-7),
    MIDSEASON(0),
    LATE(7);

    private final int days;

    Blooms(int days) {
      this.days = days;
    }

    /** Days later than usual. */
    public int days() {
      return days;
    }
  }

  public Variety {
    names = List.copyOf(names);
  }

  /** What a tree or bed says of the varieties of a kind in it. */
  public static Optional<Variety> of(Element in, String plant) {
    return in.attributes().all(KEY).stream()
        .map(Attributes.Entry::value)
        .filter(v -> v.of().isEmpty() || v.of().equals(plant))
        .findFirst();
  }
}
