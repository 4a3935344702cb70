package yardloom.materials.goods;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Length;

/**
 * How to saw the boards of one lumber size and stock length.
 *
 * @param boards boards to buy
 * @param boardFeet by nominal size
 * @param cuts one line for each way of sawing
 * @param least what is least of the list that this is part of: {@code fewest boards} or {@code
 *     least length}
 * @param proven whether no better list exists
 */
public record SawList(
    String size,
    Length stock,
    Length kerf,
    Derived<Integer> boards,
    Derived<Double> boardFeet,
    List<Cut> cuts,
    String least,
    boolean proven) {
  /** Cut lists, one for each lumber size and stock length. */
  public static final FactKey<SawList> FACT =
      FactKey.many("materials.saw-lists", SawList.class).called("saw lists");

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
