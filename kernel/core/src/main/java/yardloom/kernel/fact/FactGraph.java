package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey.Arity;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * The calculators in an order in which each runs after those it reads from.
 *
 * <p>The order is topological, ties by id, so it depends only on which calculators are loaded. No
 * priorities or events; what is asked for first is up to {@link FactPull}, what is kept from run to
 * run is up to {@link Again}, how many work at once is up to {@link Hands}, and none of them shows
 * in the facts.
 *
 * <p>References: [1] A. B. Kahn, Topological sorting of large networks, Communications of the ACM
 * 5(11), 1962, pp. 558-562.
 */
public final class FactGraph {
  private final List<Calculator> order;
  private final Map<String, List<String>> givers;
  private final Map<String, Integer> places = new HashMap<>();

  private FactGraph(List<Calculator> order, Map<String, List<String>> givers) {
    this.order = order;
    this.givers = givers;
    order.forEach(c -> places.put(c.id(), places.size()));
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
   * Runs every calculator once, one after the other.
   *
   * <p>A calculator whose needed ONE fact nobody gave is skipped and listed with the reason.
   *
   * @param again says who works and whose earlier values still hold
   * @throws PlanException from a calculator, unchanged
   */
  public Results run(Plan plan, Again again) {
    return run(plan, again, Hands.ONE);
  }

  private Results run(Plan plan, Again again, Hands hands) {
    Results results = facts();
    again.over(plan, results);
    run(plan, again, results, order, hands);
    return results;
  }

  /** Facts that nobody has given yet. */
  Results facts() {
    return new Results(places);
  }

  /**
   * Runs for each part of a plan by itself what {@link FactKey#byPart} facts and {@code
   * readOfParts} rest on, then every calculator once for the whole, of which the former are those
   * of all parts.
   *
   * @param parts the plan while each part is made, by name and in order; with none it is {@link
   *     #run(Plan, Again)}
   * @param readOfParts what will be asked of the parts
   * @param hands more than one for a plan that is worked out afresh
   */
  public Results run(
      Plan plan,
      Again again,
      Map<String, Plan> parts,
      Collection<FactKey<?>> readOfParts,
      Hands hands) {
    if (parts.isEmpty()) {
      return run(plan, again, hands);
    }
    Results results = facts();
    again.over(plan, results);
    Set<FactKey<?>> together = togetherKeys();
    Set<FactKey<?>> wanted = new TreeSet<>(readOfParts);
    wanted.addAll(together);
    List<Calculator> needed = neededFor(wanted);
    parts.forEach(
        (name, part) -> {
          Results its = facts();
          run(part, Again.AFRESH, its, needed, hands);
          results.addPart(new PartOfPlan(name, part, its), together);
        });
    results.giveNoneOf(together);
    run(
        plan,
        Again.AFRESH,
        results,
        order.stream().filter(c -> !c.gives().stream().allMatch(FactKey::together)).toList(),
        hands);
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

  static void run(Plan plan, Again again, Results results, List<Calculator> those, Hands hands) {
    hands.inTurn(afterWhom(those), i -> run(plan, again, results, those.get(i)));
  }

  /** For each of those, in order, the places of the others that it reads from. */
  private static List<Set<Integer>> afterWhom(List<Calculator> those) {
    Map<String, Set<Integer>> givers = new HashMap<>();
    List<Set<Integer>> after = new ArrayList<>();
    for (int i = 0; i < those.size(); i++) {
      Set<Integer> before = new TreeSet<>();
      ids(reads(those.get(i))).forEach(k -> before.addAll(givers.getOrDefault(k, Set.of())));
      after.add(before);
      for (String key : ids(those.get(i).gives())) {
        givers.computeIfAbsent(key, k -> new TreeSet<>()).add(i);
      }
    }
    return after;
  }

  private static void run(Plan plan, Again again, Results results, Calculator c) {
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
