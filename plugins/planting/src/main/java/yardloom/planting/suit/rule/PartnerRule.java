package yardloom.planting.suit.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;
import yardloom.planting.traits.Bloom;
import yardloom.planting.traits.Pollination;

/**
 * Does a kind that does not bear alone have a partner in reach that blooms with it?
 *
 * <p>A partner is another plant of the same group, standing or new, no farther than the row says,
 * in bloom on three days or more together. Two trees of one kind bear if they are two varieties:
 * where the plan does not say which they are, that is the condition. Kinds of different species in
 * one group are never one variety.
 *
 * <p>References: [1] Washington State University, Tree Fruit, pollination: more than 100 ft apart
 * may pollinate poorly; distances of kinds as the rows of {@link Pollination} say. Three days are
 * common practice: a week or two of bloom, of which some days are too cold for bees.
 */
public final class PartnerRule implements SuitRule {
  private static final int DAYS_TOGETHER = 3;

  @Override
  public String id() {
    return "pollination";
  }

  /** Another plant of its group. */
  private record Partner(Candidate plant, Length distance) {}

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Pollination needs = Pollination.of(plant.plant());
    if (!needs.isCross()
        || plant.at().isEmpty()
        || plant.variety().filter(Variety::selfFruitful).isPresent()) {
      return Optional.empty();
    }
    List<Partner> group = group(plant, yard, needs);
    List<Partner> reach =
        group.stream().filter(p -> p.distance().compareTo(needs.within().get()) <= 0).toList();
    List<Partner> blooming = reach.stream().filter(p -> bloomsWith(plant, p.plant())).toList();
    if (blooming.isEmpty()) {
      return Optional.of(alone(plant, yard, needs, group, reach));
    }
    Set<String> names = new TreeSet<>(names(plant));
    boolean sure = false;
    boolean unknown = names.isEmpty();
    for (Partner p : blooming) {
      sure |= !p.plant().plant().botanical().equals(plant.plant().botanical());
      unknown |= names(p.plant()).isEmpty();
      names.addAll(names(p.plant()));
    }
    if (sure || names.size() > 1) {
      return Optional.empty();
    }
    return Optional.of(unknown ? unsaid(needs) : oneVariety(names, needs));
  }

  private Reason alone(
      Candidate plant, Yard yard, Pollination needs, List<Partner> group, List<Partner> reach) {
    String why;
    if (!reach.isEmpty()) {
      why = "; what stands in reach blooms at another time";
    } else if (group.isEmpty()) {
      why = "; the plan has none";
    } else {
      Length nearest = group.stream().map(Partner::distance).min(Length::compareTo).get();
      why = "; the nearest stands " + ReasonWords.both(yard.plan(), nearest) + " away";
    }
    return new Reason(
        id(),
        Suits.DOES_NOT_FIT,
        "bears little or nothing without "
            + partner(needs)
            + " within "
            + ReasonWords.both(yard.plan(), needs.within().get())
            + why,
        "plant "
            + partner(needs)
            + " that blooms with it there, a tree grafted with two, or a self-fruitful variety"
            + " where there is one (say it with `variety`)",
        needs.source());
  }

  private Reason unsaid(Pollination needs) {
    return new Reason(
        id(),
        Suits.FITS_IF,
        "bears only with " + partner(needs) + "; the plan does not say which varieties they are",
        needs.need() == Pollination.Need.MALE_AND_FEMALE
            ? "buy a male plant beside the female ones, and say so with `variety`"
            : "buy two varieties that bloom together, and say so with `variety`",
        needs.source());
  }

  private Reason oneVariety(Set<String> names, Pollination needs) {
    return new Reason(
        id(),
        Suits.DOES_NOT_FIT,
        "bears little or nothing with its own kind: all in reach are " + String.join("", names),
        "make one of them another variety that blooms with it",
        needs.source());
  }

  private static String partner(Pollination needs) {
    return needs.need() == Pollination.Need.MALE_AND_FEMALE
        ? "a plant of the other sex"
        : "another variety or unrelated plant";
  }

  private static List<String> names(Candidate plant) {
    return plant.variety().map(Variety::names).orElse(List.of());
  }

  private static List<Partner> group(Candidate plant, Yard yard, Pollination needs) {
    List<Partner> group = new ArrayList<>();
    for (Candidate other : yard.plants()) {
      boolean same = other.in().equals(plant.in()) && other.place().equals(plant.place());
      if (same && other.at().size() > 1) {
        group.add(new Partner(other, other.at().get(0).distance(other.at().get(1))));
      } else if (!same
          && !other.at().isEmpty()
          && Pollination.of(other.plant()).group().equals(needs.group())) {
        group.add(new Partner(other, distance(plant, other)));
      }
    }
    return group;
  }

  private static Length distance(Candidate a, Candidate b) {
    Point from = a.at().get(0);
    Point near = b.at().stream().min(Comparator.comparing(from::distance)).get();
    return a.at().stream().map(near::distance).min(Comparator.naturalOrder()).get();
  }

  private static boolean bloomsWith(Candidate a, Candidate b) {
    return bloom(a).daysWith(bloom(b)) >= DAYS_TOGETHER;
  }

  private static Bloom bloom(Candidate plant) {
    int later = plant.variety().map(v -> v.blooms().days()).orElse(0);
    return Bloom.of(plant.plant()).orElseThrow().later(later);
  }
}
