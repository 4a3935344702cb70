package yardloom.kernel.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Again;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Results;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;

/**
 * Runs calculators, checks, table makers and painters over a plan, once each, in an order that
 * depends only on what is loaded.
 */
public final class Study {
  private final Plugins plugins;
  private final Hands hands;

  public Study(Plugins plugins) {
    this(plugins, Hands.ONE);
  }

  /** The same by several at once, as far as a plan is worked out afresh. */
  public Study(Plugins plugins, Hands hands) {
    this.plugins = plugins;
    this.hands = hands;
  }

  /**
   * All results of the plan.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Outcome of(Plan plan) {
    return of(plan, Again.AFRESH);
  }

  /**
   * The same; {@code again} says whose earlier results still hold.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Outcome of(Plan plan, Again again) {
    Map<String, Plan> parts = parts(plan);
    Hands some = again == Again.AFRESH ? hands : Hands.ONE;
    Results results = plugins.graph().run(plan, again, parts, readOfParts(), some);
    return new StudyRun(plugins, plan, results, again, some).outcome();
  }

  /**
   * The outcome with one sheet as it is after an edit and all else as it was: only those work whom
   * that sheet shows. Everything else has still to be worked out by {@link #of(Plan, Again)}.
   *
   * @param before of the plan before the edit
   * @param sheet id of the sheet
   * @return empty if nobody gave such a sheet before, nobody gives it now, or the plan is made in
   *     parts
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Optional<Outcome> ahead(Plan plan, Again again, Outcome before, String sheet) {
    return parts(plan).isEmpty()
        ? new SheetAhead(plugins, plan, again, before).outcome(sheet)
        : Optional.empty();
  }

  /**
   * What the checks find, without tables, drawings and sheets; the same as those of {@link #of}.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public List<Finding> check(Plan plan) {
    Results results = plugins.graph().run(plan, Again.AFRESH, parts(plan), readOfParts(), hands);
    return new StudyRun(plugins, plan, results, Again.AFRESH, hands).findings();
  }

  /** The plan while each of its parts is made; none where it is made at once. */
  private Map<String, Plan> parts(Plan plan) {
    Map<String, Plan> parts = new LinkedHashMap<>();
    plugins.all().forEach(p -> parts.putAll(p.parts(plan)));
    return parts;
  }

  private Set<FactKey<?>> readOfParts() {
    Set<FactKey<?>> reads = new TreeSet<>();
    plugins
        .each(YardPlugin::tables)
        .filter(TableMaker::isByPart)
        .forEach(m -> reads.addAll(m.reads()));
    return reads;
  }
}
