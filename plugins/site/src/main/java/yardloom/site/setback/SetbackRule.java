package yardloom.site.setback;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.unit.Length;

/**
 * A setback of one side as the code states it: a distance, the line it is measured from, what it is
 * measured to, and the heights for which it holds.
 *
 * @param outside how far the datum runs outside of the lot line
 * @param band heights for which it holds; empty for all, which is the side's own setback
 * @param rule who asks for it; empty if nobody is named
 */
public record SetbackRule(
    String side,
    EdgeRole role,
    Length distance,
    Datum datum,
    Length outside,
    MeasuredTo to,
    Optional<Restriction.Band> band,
    String rule) {
  public static final AttributeKey<SetbackRule> KEY =
      new AttributeKey<>("site.setback-rule", SetbackRule.class);

  /** What a setback is measured to: codes differ (Greenwood Village 15.04.580, Clear Creek). */
  public enum MeasuredTo {
    WALL,
    EAVES
  }

  /**
   * A setback that a code or regional file asks of all sides with a role.
   *
   * @param band heights for which it holds; empty for all
   */
  public record ForRole(
      EdgeRole role,
      Length distance,
      Datum datum,
      MeasuredTo to,
      Optional<Restriction.Band> band,
      String rule) {
    public static final AttributeKey<ForRole> KEY =
        new AttributeKey<>("site.setback-for-role", ForRole.class);

    SetbackRule at(String side, Length outside) {
      return new SetbackRule(side, role, distance, datum, outside, to, band, rule);
    }
  }

  /** The part of the distance that lies inside of the lot line. */
  public Length fromLotLine() {
    return distance.minus(outside).max(Length.ZERO);
  }
}
