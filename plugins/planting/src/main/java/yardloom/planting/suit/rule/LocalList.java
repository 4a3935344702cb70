package yardloom.planting.suit.rule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.planting.catalogue.Plant;

/**
 * Plants that a place has on a list, by catalogue name, or by botanical name down to genus, species
 * or group.
 *
 * @param say what the list asks or forbids
 */
public record LocalList(Kind kind, List<String> names, Optional<String> say, Source source) {
  /** On plans: lists of the plan and of its regional files. */
  public static final AttributeKey<LocalList> KEY =
      new AttributeKey<>("planting.local-list", LocalList.class);

  /** What a list is of. */
  public enum Kind {
    /** Native to the place. */
    NATIVE,
    /** Watched, since they spread from gardens. */
    WATCHED,
    /** Not to be planted. */
    PROHIBITED
  }

  public LocalList {
    names = List.copyOf(names);
  }

  /** The first list of a kind that has a plant. */
  public static Optional<LocalList> with(Plant plant, Kind kind, Plan plan) {
    return plan.attributes().all(KEY).stream()
        .map(Entry::value)
        .filter(list -> list.kind == kind && list.has(plant))
        .findFirst();
  }

  private boolean has(Plant plant) {
    String botanical = lower(plant.botanical()) + " ";
    return names.stream()
        .map(LocalList::lower)
        .anyMatch(n -> n.equals(lower(plant.name())) || botanical.startsWith(n + " "));
  }

  /** Hybrids are listed with a letter x, a true sign, or without either. */
  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT).replace("× ", "").replace(" x ", " ").strip();
  }
}
