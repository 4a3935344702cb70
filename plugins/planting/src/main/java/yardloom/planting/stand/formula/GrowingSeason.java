package yardloom.planting.stand.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.unit.Temperature;

/**
 * The months of a growing season: the longest run of months, around the year, whose mean
 * temperature reaches a limit.
 *
 * <p>Returned in season order as 0 (January) to 11, so that a southern season runs from spring to
 * autumn through December; empty if no month reaches the limit. When all months do, the season
 * starts in the coldest.
 *
 * <p>References: common practice, no source: 5 °C (41 °F) for hardy plants, 10 °C (50 °F) for
 * tender ones.
 */
public final class GrowingSeason {
  /** For plants that grow in cool weather. */
  public static final Temperature HARDY = Temperature.celsius(5);

  /** For plants that frost kills. */
  public static final Temperature TENDER = Temperature.celsius(10);

  private GrowingSeason() {}

  public static List<Integer> months(List<Temperature> means, Temperature limit) {
    if (means.size() != 12) {
      throw new IllegalArgumentException("12 monthly means needed, got " + means.size());
    }
    int coldest = 0;
    for (int m = 1; m < 12; m++) {
      if (means.get(m).compareTo(means.get(coldest)) < 0) {
        coldest = m;
      }
    }
    List<Integer> best = List.of();
    List<Integer> run = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      int month = (coldest + i) % 12;
      if (means.get(month).compareTo(limit) >= 0) {
        run.add(month);
      } else {
        run = new ArrayList<>();
      }
      if (run.size() > best.size()) {
        best = List.copyOf(run);
      }
    }
    return best;
  }
}
