package yardloom.planting.turn;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;

/**
 * Flags crops that follow another too late to ripen, that end one before it ripens, that are of its
 * family, or that still stand when the first of them comes again.
 *
 * <p>References: families: L. Woodruff, Rotating vegetables by family, Cornell Cooperative
 * Extension, 2021.
 */
public final class TurnCheck implements Check {
  private static final Source STAGES =
      Source.read(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO",
          1998,
          "Table 11, lengths of crop stages");
  private static final Source FAMILIES =
      Source.read("Rotating vegetables by family", "Cornell Cooperative Extension", 2021, "");

  @Override
  public String id() {
    return "planting.succession";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TurnPlan.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (List<Turn> ground : facts.get(TurnPlan.KEY).grounds()) {
      for (int i = 1; i < ground.size(); i++) {
        pair(ground.get(i - 1), ground.get(i)).forEach(found::add);
      }
      again(ground).ifPresent(found::add);
    }
    return found;
  }

  private List<Finding> pair(Turn before, Turn turn) {
    List<Finding> found = new ArrayList<>();
    String name = name(turn);
    if (!turn.inTime()) {
      found.add(
          finding(
              Severity.WARNING,
              turn,
              name
                  + " comes too late after "
                  + name(before)
                  + ": its ground is free on "
                  + day(before.over())
                  + ", and the crop takes "
                  + turn.cropDays()
                  + " days; no day of its season from then on leaves it time to ripen",
              "say on: an earlier day, which ends "
                  + name(before)
                  + " sooner, days: of an early variety, or let it follow something shorter",
              STAGES));
    }
    boolean unripe =
        before.isEndedEarly()
            && before.picked().isEmpty()
            && before.inTime()
            && before.planting().plant().draw().crop().stages().isPresent();
    if (unripe) {
      found.add(
          finding(
              Severity.WARNING,
              turn,
              name
                  + " on "
                  + day(turn.planted())
                  + " ends "
                  + name(before)
                  + " before there is anything to pick: it is planted on "
                  + day(before.planted())
                  + " and takes "
                  + before.cropDays()
                  + " days in all",
              "plant " + name + " later, or another kind before it",
              STAGES));
    }
    if (turn.planting().plant().family().name().equals(before.planting().plant().family().name())) {
      found.add(
          finding(
              Severity.NOTE,
              turn,
              name
                  + " and "
                  + name(before)
                  + " before it are one family ("
                  + turn.planting().plant().family().name()
                  + "): what ails one waits in the ground for the other",
              "put another family between them, or give both a bed of other families next year",
              FAMILIES));
    }
    return found;
  }

  /** What stands over winter may keep the ground of the first crop in the second year. */
  private Optional<Finding> again(List<Turn> ground) {
    Turn first = ground.get(0);
    Turn last = ground.get(ground.size() - 1);
    if (!last.inTime() || !last.over().isAfter(first.planted().plusYears(1))) {
      return Optional.empty();
    }
    return Optional.of(
        finding(
            Severity.NOTE,
            last,
            name(last)
                + " stands until "
                + day(last.over())
                + " of the second year, when "
                + name(first)
                + " would be due on "
                + day(first.planted())
                + ": the round takes more than a year",
            "in the second year, begin the round in another bed and let "
                + name(last)
                + " be followed by a summer crop here",
            STAGES));
  }

  private Finding finding(Severity severity, Turn turn, String what, String todo, Source source) {
    return Finding.of(id(), severity, what, todo, source)
        .about(turn.planting().bed().id(), turn.planting().place());
  }

  private static String name(Turn turn) {
    return turn.planting().plant().name();
  }

  private static String day(LocalDate date) {
    return TableFormat.day(MonthDay.from(date));
  }
}
