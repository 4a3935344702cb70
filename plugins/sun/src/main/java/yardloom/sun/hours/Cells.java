package yardloom.sun.hours;

import java.util.HashMap;
import java.util.Map;
import yardloom.kernel.plan.ElementId;
import yardloom.sun.shade.ShadeScene;

/**
 * What is known of a grid's cells besides their place. Not changed after it is handed on.
 *
 * @param aboveM height of each cell's soil above the ground
 * @param owner the element in which each cell lies and whose own shade is left out; null for none
 */
public record Cells(double[] aboveM, ElementId[] owner) {
  /** Cells on bare ground. */
  public static Cells bare(int count) {
    return new Cells(new double[count], new ElementId[count]);
  }

  /** For each cell whose shade is left out, by the numbers of a scene. */
  public int[] ownShade(ShadeScene scene) {
    Map<ElementId, Integer> known = new HashMap<>();
    int[] shade = new int[owner.length];
    for (int i = 0; i < shade.length; i++) {
      shade[i] =
          owner[i] == null ? ShadeScene.NOBODY : known.computeIfAbsent(owner[i], scene::shadeOf);
    }
    return shade;
  }
}
