package yardloom.planting.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToIntFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.year.GrowingYear;

/**
 * The search against a library's solver of integer programs (ojAlgo), on pools that are too large
 * to be enumerated: what the solver says is the best worth of any set, the set that was found has.
 */
class BestSetSolverTest {
  private static final Optional<GrowingYear> YEAR =
      Optional.of(
          new GrowingYear(
              Derived.given(MonthDay.of(4, 25), "last", SourceRef.NONE),
              Derived.given(MonthDay.of(10, 14), "first", SourceRef.NONE),
              true,
              Optional.empty()));

  /** Months go before uses, uses before layers: none has as many as a hundred. */
  private static final List<Integer> WORTH = List.of(10_000, 100, 1);

  private static final List<ToIntFunction<Kind>> BITS =
      List.of(Kind::months, Kind::uses, Kind::layer);

  private static List<Kind> pool(int seed, int size) {
    List<Kind> all = new ArrayList<>();
    for (Plant p : PlantCatalogue.shipped().all()) {
      if (p.growth().form() != Plant.Form.TREE && p.growth().form() != Plant.Form.VINE) {
        all.add(Kind.of(p, YEAR, Optional.empty(), EnumSet.allOf(Month.class)));
      }
    }
    Collections.shuffle(all, new Random(seed));
    return all.subList(0, size);
  }

  private static int worth(List<Kind> set) {
    int worth = 0;
    for (int i = 0; i < BITS.size(); i++) {
      int bits = set.stream().mapToInt(BITS.get(i)).reduce(0, (a, b) -> a | b);
      worth += WORTH.get(i) * Integer.bitCount(bits);
    }
    return worth;
  }

  /** One variable for each kind, one for each month, use and layer that a set may have. */
  private static Optimisation.Result solved(List<Kind> pool, int size, int perennials) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> kinds = new ArrayList<>();
    pool.forEach(k -> kinds.add(model.newVariable(k.plant().name()).binary()));
    Expression count = model.newExpression("kinds").level(size);
    Expression stay = model.newExpression("perennials").lower(perennials);
    for (int i = 0; i < pool.size(); i++) {
      count.set(kinds.get(i), 1);
      stay.set(kinds.get(i), pool.get(i).stays() ? 1 : 0);
      for (int j = 0; j < i; j++) {
        if (!pool.get(i).agreesWith(pool.get(j))) {
          model.newExpression(i + " or " + j).upper(1).set(kinds.get(i), 1).set(kinds.get(j), 1);
        }
      }
    }
    for (int of = 0; of < BITS.size(); of++) {
      for (int bit = 0; bit < 12; bit++) {
        Variable has = model.newVariable(of + "." + bit).binary().weight(WORTH.get(of));
        Expression covers = model.newExpression("covers " + of + "." + bit).lower(0).set(has, -1);
        for (int i = 0; i < pool.size(); i++) {
          covers.set(kinds.get(i), BITS.get(of).applyAsInt(pool.get(i)) >> bit & 1);
        }
      }
    }
    return model.maximise();
  }

  @ParameterizedTest
  @CsvSource({"1, 30, 3, 0", "2, 30, 4, 2", "3, 40, 5, 4", "4, 24, 5, 5", "5, 60, 3, 1"})
  void search_findsWhatALibrarysSolverFinds(int seed, int kinds, int size, int perennials) {
    List<Kind> pool = pool(seed, kinds);
    Optimisation.Result result = solved(pool, size, perennials);
    Optional<BestSet.Found> found = BestSet.of(pool, size, perennials);
    assertEquals(result.getState().isFeasible(), found.isPresent());
    if (found.isPresent()) {
      assertTrue(result.getState().isOptimal(), result.toString());
      assertTrue(found.get().exact());
      assertEquals(Math.rint(result.getValue()), worth(found.get().kinds()));
    }
  }
}
