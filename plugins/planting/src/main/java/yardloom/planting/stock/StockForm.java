package yardloom.planting.stock;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.Plant;

/**
 * As what a plant is bought, and in which size.
 *
 * @param kind what it is, such as {@code pot}
 * @param us its size as sold in US units; empty where it has one only
 * @param metric the same where metric units are used
 * @param suits the forms of plants that are sold so
 * @param season when it can be planted
 * @param task the kind of work that planting it is
 * @param minutes of one person for one; nothing for what goes into drills, which is worked by
 *     length
 * @param holds how many plants one piece has, such as a tray
 * @param price of one piece, if the plan says
 */
public record StockForm(
    String kind,
    String us,
    String metric,
    Set<Suits> suits,
    Season season,
    WorkTask task,
    Optional<Spread> minutes,
    int holds,
    Optional<Spread> price) {
  /** On the plan, any number: forms of its own. */
  public static final AttributeKey<StockForm> KEY =
      new AttributeKey<>("planting.stock-form", StockForm.class);

  /** What is sold in a form. */
  public enum Suits {
    /** What is sown in drills. */
    SEED,
    /** What is set in drills. */
    SETS,
    ANNUAL,
    HERB,
    SHRUB,
    VINE,
    TREE;

    static Suits of(Plant plant) {
      return switch (plant.growth().start()) {
        case SEED -> SEED;
        case SETS -> SETS;
        case PLANT -> valueOf(plant.growth().form().name());
      };
    }
  }

  /** When it can be planted. */
  public enum Season {
    /** In any season of its kind. */
    ANY,
    /** Without leaves, between leaf fall and bud break. */
    DORMANT,
    /** With its roots in earth: not in the days of bare roots alone. */
    ROOTED,
    /** Dug while it rests and sold without earth: not in the days of pots alone. */
    RESTING
  }

  public StockForm {
    suits = Set.copyOf(suits);
    if (holds < 1) {
      throw new IllegalArgumentException("a piece has at least one plant, got " + holds);
    }
  }

  /** As plans, bills and price books call it, such as {@code pot 5 gal} or {@code pot 20 l}. */
  public String name(UnitSystem units) {
    String size = size(units);
    return size.isEmpty() ? kind : kind + " " + size;
  }

  /** Both names. */
  public List<String> names() {
    return List.of(name(UnitSystem.US), name(UnitSystem.METRIC)).stream().distinct().toList();
  }

  /** Its size as sold; empty if it has none. */
  public String size(UnitSystem units) {
    return units == UnitSystem.US ? us : metric;
  }

  boolean isCalled(String name) {
    String wanted = key(name);
    return names().stream().anyMatch(n -> key(n).equals(wanted));
  }

  private static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }

  /** Whether it is sown or set in drills, which are bought for and worked by length. */
  public boolean isInDrills() {
    return suits.contains(Suits.SEED) || suits.contains(Suits.SETS);
  }

  /** Whether what is planted so has bare roots. */
  public static boolean isBare(String how) {
    return how.startsWith("bare root");
  }

  /** Whether a period is for what has earth at its roots only. */
  public static boolean isPotted(String how) {
    return how.startsWith("potted");
  }

  /** Whether a period of planting is one of this form. */
  public boolean goesInto(String how) {
    boolean bare = isBare(how);
    return switch (season) {
      case ANY -> true;
      case DORMANT -> bare;
      case ROOTED -> !bare;
      case RESTING -> !isPotted(how);
    };
  }
}
