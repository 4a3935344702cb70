package yardloom.sun.bed;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.unit.TimeSpan;
import yardloom.sun.hours.DayLight;
import yardloom.sun.hours.DayLight.Spell;

/**
 * A day's hours of sun with the spells that they are the sum of, so that they can be added up again
 * from the appendix. Times count from solar noon.
 */
final class Spells {
  private static final Source GEOMETRY =
      Source.computed(
          "Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302",
          "I. Reda, A. Andreas",
          2008,
          "");

  private Spells() {}

  /** The spells before noon; none runs over it. */
  static List<Spell> beforeNoon(DayLight light) {
    return light.spells().stream().filter(s -> s.toHour() <= 0).toList();
  }

  /** The hours as the sum of the spells. */
  static Cell cell(double hours, List<Spell> spells, String place, String day) {
    Derived.Builder why = why("sun = sum over spells of share × (to − from)", place, day);
    for (int i = 0; i < spells.size(); i++) {
      why.from("share " + (i + 1), spells.get(i).share())
          .from("from " + (i + 1), TimeSpan.hours(spells.get(i).fromHour()))
          .from("to " + (i + 1), TimeSpan.hours(spells.get(i).toHour()));
    }
    return Cell.of(why.gives(TimeSpan.hours(hours)));
  }

  private static Derived.Builder why(String formula, String place, String day) {
    return Derived.by(formula, GEOMETRY).from("place", place).from("day", day);
  }
}
