package yardloom.work.stage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.PartTurns;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.work.labour.WorkSettings;

/**
 * The stages of a plan that are still to be made, each as the plan while it is made: what earlier
 * stages made is done, what later ones make is only drawn. What stands outside of all stages is
 * made in the first.
 */
public final class Stages {
  private Stages() {}

  /** By name, in the order in which they are made; none where the plan has none to make. */
  public static Map<String, Plan> of(Plan plan) {
    List<Stage> all =
        plan.attributes().all(Stage.KEY).stream().map(Attributes.Entry::value).toList();
    List<Stage> made = all.stream().filter(s -> !s.built()).toList();
    WorkSettings work = plan.attributes().get(WorkSettings.KEY).orElseGet(WorkSettings::defaults);
    Map<String, Plan> parts = new LinkedHashMap<>();
    List<Optional<LocalDate>> starts = starts(plan);
    for (int i = 0; i < made.size(); i++) {
      Map<String, PartTurn> turns = new TreeMap<>();
      turns.put("", i == 0 ? PartTurn.NOW : PartTurn.DONE);
      all.stream().filter(Stage::built).forEach(s -> turns.put(s.name(), PartTurn.DONE));
      for (int j = 0; j < made.size(); j++) {
        turns.put(
            made.get(j).name(), j < i ? PartTurn.DONE : j == i ? PartTurn.NOW : PartTurn.LATER);
      }
      Plan part = plan.in(new PartTurns(made.get(i).name(), turns));
      parts.put(
          made.get(i).name(),
          starts
              .get(i)
              .map(day -> part.with(WorkSettings.KEY, work.startingOn(day), SourceRef.NONE))
              .orElse(part));
    }
    return parts;
  }

  /** The first day of the work: as the plan says, or that of its first stage. */
  public static Optional<LocalDate> start(Plan plan) {
    return starts(plan).stream().findFirst().orElseGet(() -> WorkSettings.of(plan).start());
  }

  /** The first day of each stage: as it says, else as the work says, else a year after the last. */
  private static List<Optional<LocalDate>> starts(Plan plan) {
    List<Optional<LocalDate>> starts = new ArrayList<>();
    Optional<LocalDate> usual = WorkSettings.of(plan).start();
    for (Attributes.Entry<Stage> entry : plan.attributes().all(Stage.KEY)) {
      if (!entry.value().built()) {
        Optional<LocalDate> before = usual;
        Optional<LocalDate> start = entry.value().from().or(() -> before);
        starts.add(start);
        usual = start.map(s -> s.plusYears(1));
      }
    }
    return starts;
  }
}
