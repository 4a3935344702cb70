package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;

/** The contract of plugins on a plan of all trades: each alone, each missing, and all together. */
class FullPlanContractTest {
  /**
   * What the yard says nothing of: rain by the day, goods, a region, soil tests, residues, bays,
   * spots, own items, new things to build, kinds of another season than the rest; it has frost.
   */
  private static final Set<String> NOT_ASKED =
      Set.of(
          "climate.daily-et",
          "climate.daily-rain",
          "climate.warm-season",
          "site.earth",
          "sun.soil-tops",
          "work.frost-said",
          "water.overflow-bill",
          "water.tank-bill",
          "work.own-bill",
          "work.own-counted",
          "materials.built",
          "materials.hard-goods",
          "soil.region",
          "planting.later",
          "planting.bay",
          "planting.rotation-plan",
          "soil.acidity",
          "soil.amendments",
          "soil.heap",
          "sun.spots",
          "sun.lost");

  private static Plan plan() {
    return Drawn.of(new LawYard().script()).outcome().plan();
  }

  static List<String> plugins() {
    return Drawn.plugins().all().stream().map(p -> p.info().id()).sorted().toList();
  }

  private static YardPlugin plugin(String id) {
    return Drawn.plugins().all().stream()
        .filter(p -> p.info().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static List<YardPlugin> others(String id) {
    return Drawn.plugins().all().stream().filter(p -> !p.info().id().equals(id)).toList();
  }

  /** What others say in the plan must not trouble it, nor what they would have given. */
  @ParameterizedTest
  @MethodSource("plugins")
  void plugin_aloneWithAPlanOfAllTrades_holdsTheContract(String id) {
    Outcome alone = PluginContract.holdsOn(plan(), List.of(plugin(id)));
    Set<String> own = new TreeSet<>();
    plugin(id).tables().forEach(t -> own.add(t.id()));
    own.add("findings");
    alone.tables().forEach(t -> assertTrue(own.contains(t.id()), t.id()));
  }

  /**
   * Tables of the rest say the same or less, and nothing breaks. That each says the same twice is
   * asked of each alone and of all together.
   */
  @ParameterizedTest
  @MethodSource("plugins")
  void plugin_leftOut_leavesTheOthersAtWork(String id) {
    Outcome without = PluginContract.showsOn(plan(), others(id));
    assertFalse(without.tables().isEmpty());
    Set<String> known = Drawn.of(new LawYard().script()).tables().keySet();
    without.tables().forEach(t -> assertTrue(known.contains(t.id()), t.id()));
  }

  @Test
  void allPlugins_onThePlan_giveTheSameTwice() {
    Outcome outcome = PluginContract.holdsOn(plan(), Drawn.plugins().all());
    assertEquals(Drawn.of(new LawYard().script()).outcome().tables(), outcome.tables());
  }

  /** A calculator that runs gives something, and only what it says. */
  @Test
  void calculators_onThePlan_giveWhatTheyDeclare() {
    Results results = new Study(Drawn.plugins()).of(plan()).results();
    List<String> silent = new ArrayList<>();
    for (YardPlugin plugin : Drawn.plugins().all()) {
      for (Calculator calculator : plugin.calculators()) {
        boolean gave =
            calculator.gives().stream().anyMatch(key -> gave(results, key, calculator.id()));
        if (!gave && !results.skipped().containsKey(calculator.id())) {
          silent.add(calculator.id());
        }
      }
    }
    silent.removeAll(NOT_ASKED);
    assertEquals(List.of(), silent);
  }

  private static boolean gave(Results results, FactKey<?> key, String calculator) {
    return results.given(key).stream().anyMatch(g -> g.giver().equals(calculator));
  }
}
