package yardloom.planting.suit.rule;

import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.LightNeed;
import yardloom.facts.SunHours;
import yardloom.kernel.unit.Months;
import yardloom.planting.traits.LeastLight;

/**
 * Has the place the light that the kind asks for, in the months in which it grows?
 *
 * <p>What it asks for is a class of the plan's scheme of light. Below that it may still grow: down
 * to the fewest hours that its row gives, as the mean over the months between the frosts, or April
 * to September where frost is not known (October to March in the south). Half a day is four hours.
 *
 * <p>References: [1] Cornell Cooperative Extension Cayuga, Eco Talk, 3 November 2022 (hazelnut, at
 * least four hours of direct sun); the fewest hours as the rows of {@link LeastLight} say.
 */
public final class LightRule implements SuitRule {
  private static final double HALF_DAY_HOURS = 4;
  private static final int APRIL = 4;
  private static final int SEPTEMBER = 9;
  private static final int HALF_YEAR = 6;

  @Override
  public String id() {
    return "light";
  }

  @Override
  public Optional<Reason> judge(Candidate plant, Yard yard) {
    Optional<SunHours.Place> place = yard.sun().flatMap(s -> s.of(plant.in()));
    if (place.isEmpty()) {
      return Optional.empty();
    }
    LeastLight least = LeastLight.of(plant.plant());
    List<Month> growing = growing(yard);
    double mean = growing.stream().mapToDouble(m -> hours(place.get(), m)).average().orElse(0);
    Month darkest = growing.stream().min(Comparator.comparing(m -> hours(place.get(), m))).get();
    String has =
        String.format(
            Locale.ROOT,
            "asks for %s; from %s to %s this place has %.1f h of direct sun a day on the mean, "
                + "least in %s with %.1f h: %s (scheme %s)",
            asks(plant.plant().light().amount()),
            name(growing.get(0)),
            name(growing.get(growing.size() - 1)),
            mean,
            name(darkest),
            hours(place.get(), darkest),
            place.get().lightClass(),
            yard.sun().get().scheme());
    if (mean < least.hours()) {
      return Optional.of(
          new Reason(
              id(),
              Suits.DOES_NOT_FIT,
              has + String.format(Locale.ROOT, "; it needs %.0f h to bear", least.hours()),
              "choose a plant for less sun, or a sunnier place",
              least.source()));
    }
    if (suits(plant.plant().light().amount(), place.get(), yard.sun().get())) {
      return Optional.empty();
    }
    boolean tooSunny = plant.plant().light().amount() == LightNeed.Amount.PART_SHADE_OR_SHADE;
    return Optional.of(
        new Reason(
            id(),
            Suits.FITS_IF,
            has,
            tooSunny
                ? "keep it moist and give it shade from taller plants"
                : "a later and smaller harvest is accepted",
            plant.plant().light().source()));
  }

  /** Whether the class of the place is one that the need allows. */
  public static boolean suits(LightNeed.Amount amount, SunHours.Place place, SunHours sun) {
    List<String> classes = sun.classes();
    return switch (amount) {
      case FULL_SUN -> place.lightClass().equals(classes.get(0));
      case HALF_DAY -> place.season().hours() >= HALF_DAY_HOURS;
      case SUN_OR_PART_SHADE -> !place.lightClass().equals(classes.get(classes.size() - 1));
      case PART_SHADE_OR_SHADE -> !place.lightClass().equals(classes.get(0));
    };
  }

  /** A need in words. */
  public static String asks(LightNeed.Amount amount) {
    return switch (amount) {
      case FULL_SUN -> "full sun";
      case HALF_DAY -> String.format(Locale.ROOT, "%.0f h of direct sun a day", HALF_DAY_HOURS);
      case SUN_OR_PART_SHADE -> "sun or part shade";
      case PART_SHADE_OR_SHADE -> "part shade or shade";
    };
  }

  private static double hours(SunHours.Place place, Month month) {
    return place.months().get(month.getValue() - 1).hours();
  }

  private static String name(Month month) {
    return Months.fullName(month);
  }

  private static List<Month> growing(Yard yard) {
    int from = yard.plan().isSouthern() ? APRIL + HALF_YEAR : APRIL;
    int until = yard.plan().isSouthern() ? SEPTEMBER - HALF_YEAR : SEPTEMBER;
    if (yard.weather().frost().isPresent()) {
      from = yard.weather().frost().get().lastOfSpring().value().getMonthValue();
      until = yard.weather().frost().get().firstOfFall().value().getMonthValue();
    }
    List<Month> months = new ArrayList<>();
    Month month = Month.of(from);
    months.add(month);
    while (month.getValue() != until) {
      month = month.plus(1);
      months.add(month);
    }
    return months;
  }
}
