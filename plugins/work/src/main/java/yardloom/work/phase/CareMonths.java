package yardloom.work.phase;

import java.time.Month;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import yardloom.facts.ClimateNormals;
import yardloom.facts.ReferenceEt;
import yardloom.facts.Stand;

/**
 * Which months of the year ask for care of new plants.
 *
 * <p>A month is dry where the new plants need more water than it rains: crop coefficient times
 * reference evapotranspiration, the mean over their ground, against the rain of the month as it
 * falls. Water kept in the soil is not counted: new roots reach little of it.
 *
 * <p>References: Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and Drainage
 * Paper 56, 1998, equation 58 (ETc = Kc ETo).
 *
 * @param dry months in which need exceeds rain; empty where the climate is not known
 * @param thawed months whose mean is above freezing; all where the climate is not known
 * @param growing months in which half or more of the new plants' ground draws water; all where no
 *     plants are known
 * @param isKnown whether rain and need are known, and there are new plants
 */
public record CareMonths(Set<Month> dry, Set<Month> thawed, Set<Month> growing, boolean isKnown) {
  public CareMonths {
    dry = Collections.unmodifiableSet(copy(dry));
    thawed = Collections.unmodifiableSet(copy(thawed));
    growing = Collections.unmodifiableSet(copy(growing));
  }

  /** Of all stands; those that stand already need no care of the crew. */
  public static CareMonths of(
      List<Stand> stands, Optional<ClimateNormals> climate, Optional<ReferenceEt> et) {
    List<Stand> planted = stands.stream().filter(s -> !s.planted().stands()).toList();
    double all = planted.stream().mapToDouble(CareMonths::area).sum();
    Set<Month> dry = EnumSet.noneOf(Month.class);
    Set<Month> thawed = EnumSet.allOf(Month.class);
    Set<Month> growing = EnumSet.noneOf(Month.class);
    boolean known = climate.isPresent() && et.isPresent() && all > 0;
    for (Month month : Month.values()) {
      int m = month.getValue() - 1;
      if (all > 0 && areaOf(planted, m, kc -> kc > 0) >= all / 2) {
        growing.add(month);
      }
      if (climate.filter(c -> c.months().get(m).mean().celsius() <= 0).isPresent()) {
        thawed.remove(month);
      }
      if (known) {
        double needMm =
            planted.stream().mapToDouble(s -> s.thirst().kc().get(m) * area(s)).sum()
                / all
                * et.get().months().get(m).value().millimetres();
        if (needMm > climate.get().months().get(m).rain().millimetres()) {
          dry.add(month);
        }
      }
    }
    return new CareMonths(
        dry, thawed, growing.isEmpty() ? EnumSet.allOf(Month.class) : growing, known);
  }

  private static double areaOf(List<Stand> stands, int month, DoublePredicate kc) {
    return stands.stream()
        .filter(s -> kc.test(s.thirst().kc().get(month)))
        .mapToDouble(CareMonths::area)
        .sum();
  }

  private static double area(Stand stand) {
    return stand.placed().area().squareMetres();
  }

  private static Set<Month> copy(Set<Month> months) {
    return months.isEmpty() ? EnumSet.noneOf(Month.class) : EnumSet.copyOf(months);
  }
}
