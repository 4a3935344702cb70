package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import yardloom.kernel.unit.Length;

/** Finds which of many shapes may lie near another, without comparing all pairs. */
public final class Nearby {
  private final STRtree tree = new STRtree();

  public Nearby(List<Shape> shapes) {
    for (int i = 0; i < shapes.size(); i++) {
      if (!shapes.get(i).isEmpty()) {
        tree.insert(shapes.get(i).bounds(), i);
      }
    }
    tree.build();
  }

  /** The numbers of the shapes whose bounds come within {@code distance}, in rising order. */
  public List<Integer> to(Shape shape, Length distance) {
    if (shape.isEmpty()) {
      return List.of();
    }
    Envelope box = shape.bounds();
    box.expandBy(distance.metres());
    List<Integer> found = new ArrayList<>();
    for (Object i : tree.query(box)) {
      found.add((Integer) i);
    }
    Collections.sort(found);
    return found;
  }
}
