package yardloom.materials.goods;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * A board frame about a bed.
 *
 * @param size lumber as sold, such as {@code 2x10}
 * @param stocks the lengths in which boards are bought, rising
 * @param kerf width of the saw cut
 * @param courses boards above one another
 */
public record Frame(String size, List<Length> stocks, Length kerf, int courses, SourceRef place) {
  /** On a bed: boards about it. */
  public static final AttributeKey<Frame> KEY = new AttributeKey<>("materials.frame", Frame.class);

  public Frame {
    stocks = stocks.stream().sorted().distinct().toList();
  }

  /** The longest board that can be bought. */
  public Length longest() {
    return stocks.get(stocks.size() - 1);
  }
}
