package yardloom.kernel.draw;

import java.util.Comparator;

/**
 * A named layer of a drawing.
 *
 * @param id plugin and name, such as {@code planting.plants}
 * @param title how the legend calls it
 */
public record Layer(String id, String title, Band band) implements Comparable<Layer> {
  /** Drawing order, lowest first. */
  public enum Band {
    GROUND,
    WORKS,
    PLANTS,
    WATER,
    SUN,
    NOTES
  }

  @Override
  public int compareTo(Layer other) {
    return Comparator.comparing(Layer::band).thenComparing(Layer::id).compare(this, other);
  }
}
