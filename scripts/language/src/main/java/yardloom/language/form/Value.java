package yardloom.language.form;

import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Quantity;

/** A value of a plan in its JSON form; calls of words are values too. */
public sealed interface Value
    permits Step.Call,
        Value.Plain,
        Value.Measure,
        Value.At,
        Value.Along,
        Value.Ground,
        Value.Items,
        Value.Ref,
        Value.Given {

  /** A text, number or truth. */
  record Plain(Object value) implements Value {}

  /**
   * A quantity.
   *
   * @param text as the plan writes it, such as {@code 40 ft}
   */
  record Measure(Quantity<?> value, String text) implements Value {}

  /** A point by its two lengths. */
  record At(Measure x, Measure y) implements Value {}

  /** A line that no word made, point by point. */
  record Along(Line line) implements Value {}

  /** Ground that no word made, ring by ring. */
  record Ground(Shape shape) implements Value {}

  record Items(List<Value> values) implements Value {}

  /**
   * What an earlier step made.
   *
   * @param part which of the several things it made, from 1; 0 for the whole
   * @param type the type of what it made
   */
  record Ref(String name, int part, Class<?> type) implements Value {}

  /** The value of a parameter. */
  record Given(String name, Class<?> type) implements Value {}
}
