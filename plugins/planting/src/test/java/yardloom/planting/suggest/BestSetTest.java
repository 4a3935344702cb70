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
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.year.GrowingYear;

/** The search against plain enumeration, and what may stand together. */
class BestSetTest {
  private static final Optional<GrowingYear> YEAR =
      Optional.of(
          new GrowingYear(
              Derived.given(MonthDay.of(4, 25), "last", SourceRef.NONE),
              Derived.given(MonthDay.of(10, 14), "first", SourceRef.NONE),
              true,
              Optional.empty()));

  private static Kind kind(String name) {
    return Kind.of(
        PlantCatalogue.shipped().plant(name), YEAR, Optional.empty(), EnumSet.allOf(Month.class));
  }

  /** Last frost 25 April: asparagus is picked on days 0 to 56, to 20 June: April, May and June. */
  @Test
  void months_areThoseOfTheSeason() {
    assertEquals(0b111000, kind("asparagus").months());
    assertEquals(
        0b001000,
        Kind.of(
                PlantCatalogue.shipped().plant("asparagus"),
                YEAR,
                Optional.empty(),
                EnumSet.range(Month.JANUARY, Month.APRIL))
            .months());
  }

  /** Relatives, thirsty beside dry, acid beside limy soil, runners beside low kinds. */
  @Test
  void kindsThatDoNotAgree_areKeptApart() {
    assertTrue(!kind("black raspberry").agreesWith(kind("red raspberry")));
    assertTrue(!kind("thyme").agreesWith(kind("skirret")));
    assertTrue(!kind("highbush blueberry").agreesWith(kind("sea kale")));
    assertTrue(!kind("peppermint").agreesWith(kind("chives")));
    assertTrue(!kind("red raspberry").agreesWith(kind("bee balm")));
    assertTrue(!kind("Jerusalem artichoke").agreesWith(kind("red currant")));
    assertTrue(kind("Jerusalem artichoke").agreesWith(kind("pole bean")));
    assertTrue(kind("asparagus").agreesWith(kind("red currant")));
  }

  /** The best of random pools is the best of all their sets; none when no set agrees. */
  @Property(tries = 60)
  void search_findsWhatEnumerationFinds(
      @ForAll @IntRange(min = 0, max = 100_000) int seed,
      @ForAll @IntRange(min = 2, max = 4) int size,
      @ForAll @IntRange(min = 0, max = 4) int perennials) {
    List<Kind> all = new ArrayList<>();
    PlantCatalogue.shipped().all().forEach(p -> all.add(kind(p.name())));
    Collections.shuffle(all, new Random(seed));
    List<Kind> pool = all.subList(0, 11);
    int best = best(pool, new ArrayList<>(), 0, size, perennials);
    Optional<BestSet.Found> found = BestSet.of(pool, size, perennials);
    assertEquals(best >= 0, found.isPresent());
    found.ifPresent(
        f -> {
          assertTrue(f.exact());
          assertEquals(best, score(f.kinds()));
          assertEquals(size, f.kinds().size());
          assertTrue(f.kinds().stream().filter(Kind::stays).count() >= perennials);
          for (Kind a : f.kinds()) {
            f.kinds().stream().filter(b -> b != a).forEach(b -> assertTrue(a.agreesWith(b)));
          }
        });
  }

  /** A digit each: months in front, then uses, then layers, of which four kinds have 4 at most. */
  private static int score(List<Kind> set) {
    int months = set.stream().mapToInt(Kind::months).reduce(0, (a, b) -> a | b);
    int uses = set.stream().mapToInt(Kind::uses).reduce(0, (a, b) -> a | b);
    int layers = set.stream().mapToInt(Kind::layer).reduce(0, (a, b) -> a | b);
    return 100 * Integer.bitCount(months) + 10 * Integer.bitCount(uses) + Integer.bitCount(layers);
  }

  private static int best(List<Kind> pool, List<Kind> set, int from, int size, int perennials) {
    if (set.size() == size) {
      boolean agree =
          set.stream().allMatch(a -> set.stream().allMatch(b -> a == b || a.agreesWith(b)));
      boolean stays = set.stream().filter(Kind::stays).count() >= perennials;
      return agree && stays ? score(set) : -1;
    }
    int best = -1;
    for (int i = from; i < pool.size(); i++) {
      set.add(pool.get(i));
      best = Math.max(best, best(pool, set, i + 1, size, perennials));
      set.remove(set.size() - 1);
    }
    return best;
  }
}
