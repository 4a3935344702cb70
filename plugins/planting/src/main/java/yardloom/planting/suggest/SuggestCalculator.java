package yardloom.planting.suggest;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.SuitPlan;
import yardloom.planting.suit.SuitRules;
import yardloom.planting.suit.rule.Candidate;
import yardloom.planting.suit.rule.LocalList;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.Yard;
import yardloom.planting.traits.Growth;
import yardloom.planting.traits.NativeRegion;
import yardloom.planting.traits.Pollination;
import yardloom.planting.year.GrowingYear;

/**
 * Finds kinds for the beds that ask for some: of those that suit the bed by every rule, a set that
 * agrees and brings most. Two sets are given, the second without the kinds of the first.
 */
public final class SuggestCalculator implements Calculator {
  private static final int SETS = 2;
  private static final Length OVER_THE_EDGE = Length.inches(6);

  /** In a bed several are planted, of two varieties: the line says so. */
  private static final String POLLINATION = "pollination";

  @Override
  public String id() {
    return "planting.suggestions";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(SuitPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(Suggestions.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Yard yard = in.get(SuitPlan.KEY).yard();
    boolean isFrostFree =
        in.find(YardFacts.WARM_SEASON).isPresent() && in.find(YardFacts.FROST).isEmpty();
    boolean tender = isFrostFree || yard.weather().hardiness().isPresent();
    Optional<GrowingYear> year = GrowingYear.of(in);
    List<Suggestions.Bed> beds = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      Optional<Wish> wish = bed.attributes().get(Wish.KEY);
      if (wish.isPresent() && !bed.shape().isEmpty()) {
        beds.add(suggest(bed, wish.get(), yard, year, tender));
      }
    }
    out.give(Suggestions.KEY, new Suggestions(beds));
  }

  private static Suggestions.Bed suggest(
      Element.Bed bed, Wish wish, Yard yard, Optional<GrowingYear> year, boolean tender) {
    List<Kind> pool =
        pool(bed, wish, yard, year).stream().filter(k -> tender || !k.isTender()).toList();
    List<Suggestions.Set> sets = new ArrayList<>();
    int perennials = (int) Math.ceil(wish.perennials() * wish.kinds() - 1e-9);
    List<Kind> left = new ArrayList<>(pool);
    for (int i = 0; i < SETS; i++) {
      Optional<BestSet.Found> found = BestSet.of(left, wish.kinds(), perennials);
      if (found.isEmpty()) {
        break;
      }
      sets.add(set(found.get(), bed, wish));
      left.removeAll(found.get().kinds());
    }
    return new Suggestions.Bed(bed.id(), wish, pool.size(), year.isPresent(), tender, sets);
  }

  /**
   * The kinds that have room in the bed, grown and in an equal part of it, suit it, and agree with
   * what is planted there; best known first.
   */
  private static List<Kind> pool(
      Element.Bed bed, Wish wish, Yard yard, Optional<GrowingYear> year) {
    List<Kind> there = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Candidate plant : yard.plants()) {
      if (plant.in().equals(bed.id()) && names.add(plant.plant().name())) {
        there.add(Kind.of(plant.plant(), year, yard.weather().normals(), wish.months()));
      }
    }
    Length width = bed.shape().inside().times(2).plus(OVER_THE_EDGE);
    Point middle = bed.shape().heart();
    return PlantCatalogue.of(yard.plan()).all().stream()
        .filter(p -> !names.contains(p.name()))
        .filter(p -> p.growth().form() != Plant.Form.TREE && p.growth().form() != Plant.Form.VINE)
        .filter(p -> !wish.natives() || isNative(p, yard))
        .filter(p -> p.size().spread().middle().compareTo(width) <= 0 && count(p, bed, wish) > 0)
        .map(p -> Kind.of(p, year, yard.weather().normals(), wish.months()))
        .filter(k -> k.months() != 0 || k.uses() != 0)
        .filter(k -> !wish.littleWork() || k.stays() && !k.runs())
        .filter(k -> there.stream().allMatch(k::agreesWith))
        .filter(k -> suits(k.plant(), bed, middle, yard))
        .sorted(
            Comparator.comparing((Kind k) -> !k.stays())
                .thenComparing(k -> k.plant().unverified().size())
                .thenComparing(k -> k.plant().name()))
        .toList();
  }

  private static boolean isNative(Plant plant, Yard yard) {
    return NativeRegion.isHere(plant, yard.plan().site())
        || LocalList.with(plant, LocalList.Kind.NATIVE, yard.plan()).isPresent();
  }

  /** How many its equal part of the bed holds. */
  private static int count(Plant plant, Element.Bed bed, Wish wish) {
    Length rows =
        plant.growth().season().isAnnual()
            ? plant.size().inRow().middle()
            : plant.size().rows().middle();
    double each = plant.size().inRow().middle().by(rows).squareFeet();
    return (int) (bed.shape().area().squareFeet() / wish.kinds() / each);
  }

  private static boolean suits(Plant plant, Element.Bed bed, Point at, Yard yard) {
    Candidate candidate = Candidate.thoughtOf(plant, bed.id(), SourceRef.NONE, List.of(at));
    List<Reason> reasons = SuitRules.judge(candidate, yard);
    return reasons.stream().allMatch(r -> r.rule().equals(POLLINATION));
  }

  private static Suggestions.Set set(BestSet.Found found, Element.Bed bed, Wish wish) {
    List<Suggestions.Line> lines = new ArrayList<>();
    for (Kind kind : found.kinds()) {
      List<Kind> others = new ArrayList<>(found.kinds());
      others.remove(kind);
      lines.add(
          new Suggestions.Line(
              kind.plant().name(),
              kind.plant().growth().start().isInDrills()
                  ? OptionalInt.empty()
                  : OptionalInt.of(count(kind.plant(), bed, wish)),
              months(kind.months()),
              String.join(", ", Growth.roles(kind.plant())),
              why(kind, others)));
    }
    return new Suggestions.Set(lines, found.exact());
  }

  private static String why(Kind kind, List<Kind> others) {
    int months = kind.months();
    int uses = kind.uses();
    for (Kind other : others) {
      months &= ~other.months();
      uses &= ~other.uses();
    }
    List<String> said = new ArrayList<>();
    if (months != 0) {
      said.add("alone is picked in " + months(months));
    }
    List<String> alone = new ArrayList<>();
    for (int i = 0; i < Kind.USES.size(); i++) {
      if ((uses >> i & 1) == 1) {
        alone.add(Kind.DOES.get(i));
      }
    }
    if (!alone.isEmpty()) {
      said.add("alone " + listed(alone));
    }
    if (said.isEmpty()) {
      said.add(
          "adds its layer ("
              + Growth.of(kind.plant()).layer().name().toLowerCase(Locale.ROOT)
              + ") and suits the others");
    }
    if (Pollination.of(kind.plant()).isCross()) {
      said.add("plant two varieties");
    }
    return String.join("; ", said);
  }

  /** "a", "a and b", "a, b and c". */
  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** In the order of the year. */
  private static String months(int bits) {
    List<String> names = new ArrayList<>();
    for (Month month : Month.values()) {
      if ((bits >> (month.getValue() - 1) & 1) == 1) {
        names.add(Months.name(month));
      }
    }
    return String.join(", ", names);
  }
}
