package yardloom.site.ground;

import yardloom.kernel.geom.Line;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * A bank beside a swale, of all the earth that the swale gives. Its section, as large as that of
 * the swale, has a flat top t and two sides of run s over rise 1: A = t h + s h², so that h = (√(t²
 * + 4 s A) − t) / 2 s. Earth swells when it is dug and is trodden down again; both are left out.
 *
 * @param of the swale
 * @param line that of the swale, so turned that the bank lies on its left
 * @param top width of its flat top
 * @param sides run over rise of both sides
 */
record Berm(ElementId of, Swale swale, Line line, Length top, double sides) {
  /** On the structure that shows its ground. */
  static final AttributeKey<Berm> KEY = new AttributeKey<>("site.berm", Berm.class);

  /** Above the ground beside the swale. */
  Length height() {
    double area = swale.section().squareMetres();
    double flat = top.metres();
    return Length.metres((Math.sqrt(flat * flat + 4 * sides * area) - flat) / (2 * sides));
  }

  /** At its foot. */
  Length width() {
    return top.plus(height().times(2 * sides));
  }
}
