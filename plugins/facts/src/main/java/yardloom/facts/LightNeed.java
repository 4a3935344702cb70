package yardloom.facts;

import java.util.Objects;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * The direct sun that one kind of plant asks for where it is planted.
 *
 * <p>How many hours are full sun the plan's scheme of light says, for plants and places alike.
 *
 * @param in the bed or tree it belongs to
 * @param place where the plan says so
 * @param plant the catalogue name
 * @param source who says so
 */
public record LightNeed(ElementId in, SourceRef place, String plant, Amount amount, Source source) {
  /** How much it asks for. */
  public enum Amount {
    /** The sunniest class of the scheme. */
    FULL_SUN,
    /** At least four hours a day, whatever the scheme calls that. */
    HALF_DAY,
    /** Any class of the scheme but its shadiest. */
    SUN_OR_PART_SHADE,
    /** Any class of the scheme but its sunniest. */
    PART_SHADE_OR_SHADE
  }

  public LightNeed {
    Objects.requireNonNull(in);
    Objects.requireNonNull(place);
    Objects.requireNonNull(amount);
    Objects.requireNonNull(source);
  }
}
