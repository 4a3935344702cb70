package yardloom.sun.neighbour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import yardloom.facts.Field;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.sun.hours.Grid;
import yardloom.sun.hours.SunMap;
import yardloom.sun.yard.FieldMaker;
import yardloom.sun.yard.YardSun;

/**
 * Says which beds lose season's sun to each thing that the plan proposes: mean over the bed with
 * and without it. Silent below {@link NeighbourCheck#NOTABLE_HOURS} a day.
 */
public final class ProposedCheck implements Check {
  @Override
  public String id() {
    return "sun.proposed";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Set<ElementId> proposed = ProposedWords.proposed(plan);
    List<Finding> found = new ArrayList<>();
    if (plan.site().isEmpty() || proposed.isEmpty()) {
      return found;
    }
    Site site = plan.site().get();
    List<Obstacle> all = facts.all(YardFacts.OBSTACLES);
    YardSun yard = new YardSun(plan, site, all, Optional.empty());
    Optional<Grid> grid = yard.grid(plan);
    if (grid.isEmpty()) {
      return found;
    }
    SunMap with =
        SunMap.of(yard.engine, grid.get(), FieldMaker.cells(plan, grid.get()), yard.groups);
    Field now = FieldMaker.field(grid.get(), with::seasonMean);
    for (ElementId id : proposed) {
      List<Obstacle> others = all.stream().filter(o -> !o.of().equals(id)).toList();
      YardSun bare = new YardSun(plan, site, others, Optional.empty());
      SunMap without = with.after(bare.engine, id);
      Field before = FieldMaker.field(grid.get(), without::seasonMean);
      plan.all(Element.Bed.class).forEach(bed -> judge(bed, id, before, now).ifPresent(found::add));
    }
    return found;
  }

  private Optional<Finding> judge(Element.Bed bed, ElementId proposed, Field before, Field now) {
    OptionalDouble was = before.mean(bed.shape());
    OptionalDouble is = now.mean(bed.shape());
    if (was.isEmpty() || is.isEmpty() || bed.id().equals(proposed)) {
      return Optional.empty();
    }
    double lost = was.getAsDouble() - is.getAsDouble();
    if (lost < NeighbourCheck.NOTABLE_HOURS) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
                id(),
                Severity.WARNING,
                String.format(
                    Locale.ROOT,
                    "%s would take %.1f h of direct sun a day of the season from it (%.1f h without"
                        + " it, %.1f h with it)",
                    proposed,
                    lost,
                    was.getAsDouble(),
                    is.getAsDouble()),
                "move it or keep it lower, or give the bed plants for less sun",
                Source.commonPractice("shade of what is new on beds"))
            .about(bed.id(), bed.place()));
  }
}
