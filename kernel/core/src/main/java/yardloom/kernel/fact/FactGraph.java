package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey.Arity;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * The calculators in an order in which each runs after those it reads from.
 *
 * <p>The order is topological, ties by id, so it depends only on which calculators are loaded. No
 * threads, priorities or events; what is asked for first is up to {@link FactPull}, what is kept
 * from run to run is up to {@link Again}.
 *
 * <p>References: [1] A. B. Kahn, Topological sorting of large networks, Communications of the ACM
 * 5(11), 1962, pp. 558-562.
 */
public final class FactGraph {
  private final List<Calculator> order;
  private final Map<String, List<String>> givers;

  private FactGraph(List<Calculator> order, Map<String, List<String>> givers) {
    this.order = order;
    this.givers = givers;
  }

  /**
   * Sorts the calculators.
   *
   * @throws PlanException (PLUGIN_CONFLICT) for two of one id or two givers of a ONE fact; (CYCLE)
   *     if calculators wait for each other, naming the loop
   */
  public static FactGraph of(Collection<? extends Calculator> calculators) {
    Map<String, Calculator> byId = new TreeMap<>();
    Map<String, List<String>> givers = new TreeMap<>();
    List<Problem> problems = new ArrayList<>();
    List<Calculator> sorted =
        calculators.stream()
            .map(c -> (Calculator) c)
            .sorted(Comparator.comparing(Calculator::id))
            .toList();
    for (Calculator c : sorted) {
      if (byId.put(c.id(), c) != null) {
        problems.add(conflict("two calculators are called " + c.id()));
      }
      for (FactKey<?> key : new TreeSet<>(c.gives())) {
        List<String> all = givers.computeIfAbsent(key.id(), k -> new ArrayList<>());
        all.add(c.id());
        if (key.arity() == Arity.ONE && all.size() == 2) {
          problems.add(
              conflict(
                  "both "
                      + all.get(0)
                      + " and "
                      + c.id()
                      + " give "
                      + key.id()
                      + ", which has one giver; load only one of them"));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    return new FactGraph(sort(byId, givers), givers);
  }

  private static Problem conflict(String message) {
    return new Problem(ProblemCode.PLUGIN_CONFLICT, SourceRef.NONE, message);
  }

  private static List<Calculator> sort(
      Map<String, Calculator> byId, Map<String, List<String>> givers) {
    Map<String, Set<String>> waitsFor = new TreeMap<>();
    for (Calculator c : byId.values()) {
      Set<String> before = new TreeSet<>();
      for (FactKey<?> key : reads(c)) {
        before.addAll(givers.getOrDefault(key.id(), List.of()));
      }
      before.remove(c.id());
      waitsFor.put(c.id(), before);
    }
    List<Calculator> order = new ArrayList<>();
    while (!waitsFor.isEmpty()) {
      String next =
          waitsFor.entrySet().stream()
              .filter(e -> e.getValue().isEmpty())
              .map(Map.Entry::getKey)
              .findFirst()
              .orElseThrow(() -> cycle(byId, givers, waitsFor));
      waitsFor.remove(next);
      waitsFor.values().forEach(s -> s.remove(next));
      order.add(byId.get(next));
    }
    return List.copyOf(order);
  }

  private static Set<FactKey<?>> reads(Calculator c) {
    Set<FactKey<?>> reads = new TreeSet<>(c.needs());
    reads.addAll(c.wants());
    return reads;
  }

  private static PlanException cycle(
      Map<String, Calculator> byId,
      Map<String, List<String>> givers,
      Map<String, Set<String>> waitsFor) {
    Map<String, String> loop = new LinkedHashMap<>();
    String at = waitsFor.keySet().iterator().next();
    while (!loop.containsKey(at)) {
      String next = waitsFor.get(at).iterator().next();
      String waiting = at;
      String key =
          reads(byId.get(at)).stream()
              .map(FactKey::id)
              .filter(k -> givers.getOrDefault(k, List.of()).contains(next))
              .findFirst()
              .orElseThrow();
      loop.put(waiting, waiting + " needs " + key + " from " + next);
      at = next;
    }
    List<String> steps = new ArrayList<>(loop.values());
    int start = new ArrayList<>(loop.keySet()).indexOf(at);
    return new PlanException(
        ProblemCode.CYCLE,
        "calculators wait for each other: "
            + String.join("; ", steps.subList(start, steps.size())));
  }

  /** The calculators in running order. */
  public List<Calculator> order() {
    return order;
  }

  /** Runs every calculator once, as {@link #run(Plan, Again)} does for the first time. */
  public Results run(Plan plan) {
    return run(plan, Again.AFRESH);
  }

  /**
   * Runs every calculator once.
   *
   * <p>A calculator whose needed ONE fact nobody gave is skipped and listed with the reason.
   *
   * @param again says who works and whose earlier values still hold
   * @throws PlanException from a calculator, unchanged
   */
  public Results run(Plan plan, Again again) {
    Results results = new Results();
    again.over(plan, results);
    run(plan, again, results, order);
    return results;
  }

  /**
   * Runs for each part of a plan by itself what {@link FactKey#byPart} facts and {@code
   * readOfParts} rest on, then every calculator once for the whole, of which the former are those
   * of all parts.
   *
   * @param parts the plan while each part is made, by name and in order; with none it is {@link
   *     #run(Plan, Again)}
   * @param readOfParts what will be asked of the parts
   */
  public Results run(
      Plan plan, Again again, Map<String, Plan> parts, Collection<FactKey<?>> readOfParts) {
    if (parts.isEmpty()) {
      return run(plan, again);
    }
    Results results = new Results();
    again.over(plan, results);
    Set<FactKey<?>> together = togetherKeys();
    Set<FactKey<?>> wanted = new TreeSet<>(readOfParts);
    wanted.addAll(together);
    List<Calculator> needed = neededFor(wanted);
    parts.forEach(
        (name, part) -> {
          Results its = new Results();
          run(part, Again.AFRESH, its, needed);
          results.addPart(new PartOfPlan(name, part, its), together);
        });
    results.giveNoneOf(together);
    run(
        plan,
        Again.AFRESH,
        results,
        order.stream().filter(c -> !c.gives().stream().allMatch(FactKey::together)).toList());
    return results;
  }

  /** Begins to work out facts of a plan that is made at once, those alone that are asked for. */
  public FactPull pull(Plan plan, Again again) {
    return new FactPull(this, plan, again);
  }

  private Set<FactKey<?>> togetherKeys() {
    Set<FactKey<?>> keys = new TreeSet<>();
    order.forEach(c -> c.gives().stream().filter(FactKey::together).forEach(keys::add));
    return keys;
  }

  /** Who works for these facts, and for whom those wait. */
  List<Calculator> neededFor(Collection<? extends FactKey<?>> facts) {
    Set<String> wanted = ids(facts);
    List<Calculator> needed = new ArrayList<>();
    for (int i = order.size() - 1; i >= 0; i--) {
      Calculator c = order.get(i);
      if (c.gives().stream().anyMatch(k -> wanted.contains(k.id()))) {
        needed.add(0, c);
        wanted.addAll(ids(reads(c)));
      }
    }
    return needed;
  }

  static void run(Plan plan, Again again, Results results, List<Calculator> those) {
    for (Calculator c : those) {
      List<String> missing =
          new TreeSet<>(c.needs())
              .stream()
                  .filter(k -> k.arity() == Arity.ONE && results.find(k).isEmpty())
                  .map(FactKey::id)
                  .toList();
      if (missing.isEmpty()) {
        results.add(c, again.of("calculator " + c.id(), () -> given(c, plan, results)));
      } else {
        results.skip(c.id(), "nobody gave " + String.join(", ", missing));
      }
    }
  }

  private static List<Results.Gift<?>> given(Calculator c, Plan plan, Results results) {
    List<Results.Gift<?>> gifts = new ArrayList<>();
    c.compute(plan, results.readBy(c), results.givenBy(c, gifts));
    return List.copyOf(gifts);
  }

  static Set<String> ids(Collection<? extends FactKey<?>> keys) {
    Set<String> ids = new HashSet<>();
    keys.forEach(k -> ids.add(k.id()));
    return ids;
  }
}
