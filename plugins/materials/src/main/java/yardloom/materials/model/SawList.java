package yardloom.materials.model;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;

/**
 * How to saw all pieces of one lumber size from one stock length.
 *
 * @param boards boards to buy
 * @param boardFeet by nominal size
 * @param cuts one line for each way of sawing
 * @param proven whether no list with fewer boards exists
 */
public record SawList(
    String size,
    Length stock,
    Length kerf,
    Derived<Integer> boards,
    Derived<Double> boardFeet,
    List<Cut> cuts,
    boolean proven) {
  public SawList {
    cuts = List.copyOf(cuts);
  }

  /**
   * A way of sawing.
   *
   * @param boards how many boards are sawn so
   * @param pieces lengths from one board
   * @param labels what they are for
   * @param rest what is left of the board
   */
  public record Cut(int boards, List<Length> pieces, List<String> labels, Length rest) {
    public Cut {
      pieces = List.copyOf(pieces);
      labels = List.copyOf(labels);
    }
  }
}
