package yardloom.work.labour;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.TimeSpan;

/**
 * What planting a kind takes, watering in included.
 *
 * @param plant the catalogue name
 * @param likely hours of one person for all plants of the kind
 */
public record KindHours(String plant, Derived<TimeSpan> likely) {
  /** Hours by kind; a part of those by task. */
  public static final FactKey<KindHours> FACT =
      FactKey.many("work.kind-hours", KindHours.class).called("hours by kind").byPart();

  /** Likely hours by kind, in order of names; several of one kind add up. */
  public static Map<String, Double> byKind(List<KindHours> all) {
    Map<String, Double> hours = new TreeMap<>();
    all.forEach(k -> hours.merge(k.plant(), k.likely().value().hours(), Double::sum));
    return hours;
  }
}
