package yardloom.water.zone;

import java.util.List;
import java.util.TreeSet;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word for watering zones that are made by hand. */
public final class ZoneWords {
  private ZoneWords() {}

  @Verb(
      help =
          "Puts beds and trees with dripline behind one valve, whatever their flow and need; what"
              + " no such zone names is put together as usual. Zones are numbered as they are"
              + " written.",
      example = "wateringZone(['Greens', 'Berry row'])")
  public static void wateringZone(
      PlanScope in,
      @Arg(name = "names", help = "beds and trees of the plan, by their names") List<?> names) {
    List<String> said = names.stream().map(String::valueOf).toList();
    if (said.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "a watering zone needs at least one bed or tree");
    }
    TreeSet<String> taken = new TreeSet<>();
    in.draft().attributes().all(HandZone.KEY).forEach(e -> taken.addAll(e.value().names()));
    for (String name : said) {
      if (!taken.add(name)) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            in.place(),
            "'" + name + "' has a watering zone already; one valve waters it");
      }
    }
    in.draft().attributes().add(HandZone.KEY, new HandZone(said), in.place());
  }
}
