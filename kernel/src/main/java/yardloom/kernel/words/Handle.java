package yardloom.kernel.words;

import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;

/**
 * What a word that makes an element returns, so that later words can refer to it: {@code def house
 * = building(…)}, then {@code roof(…, house.shape)}.
 */
public final class Handle {
  private final ElementId id;
  private final Shape shape;

  public Handle(ElementId id, Shape shape) {
    this.id = id;
    this.shape = shape;
  }

  public ElementId id() {
    return id;
  }

  /** The ground it covers; scripts read it as {@code house.shape}. */
  public Shape getShape() {
    return shape;
  }
}
