package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Divides a shape among claims, so that every square metre is counted once and the parts add up to
 * the whole.
 *
 * <p>A claim loses only to earlier ones whose bounds meet its own, found in a tree of bounds, and
 * all claims are united once for the rest: taking them from the whole one after the other would
 * carry a shape with hundreds of holes through hundreds of overlays.
 */
public final class Partition {
  /** A claim to ground; several claims may bear one name. */
  public record Claim(String name, Shape ground) {}

  /** The ground that fell to a claim. */
  public record Part(String name, Shape ground) {}

  private Partition() {}

  /**
   * The parts in the order of the claims, each without what an earlier claim took, and last the
   * rest. Claims that get nothing keep an empty part.
   *
   * @param rest the name of what nobody claims
   */
  public static List<Part> of(Shape whole, List<Claim> claims, String rest) {
    STRtree bounds = new STRtree();
    for (int i = 0; i < claims.size(); i++) {
      if (!claims.get(i).ground().isEmpty()) {
        bounds.insert(claims.get(i).ground().bounds(), i);
      }
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < claims.size(); i++) {
      Claim claim = claims.get(i);
      List<Shape> earlier = earlier(bounds, claims, i);
      Shape ground = whole.and(claim.ground());
      parts.add(
          new Part(claim.name(), earlier.isEmpty() ? ground : ground.minus(Shape.union(earlier))));
    }
    parts.add(
        new Part(rest, whole.minus(Shape.union(claims.stream().map(Claim::ground).toList()))));
    return List.copyOf(parts);
  }

  /** The grounds of earlier claims that may overlap the {@code i}-th, in their order. */
  private static List<Shape> earlier(STRtree bounds, List<Claim> claims, int i) {
    List<Integer> near = new ArrayList<>();
    for (Object each : bounds.query(claims.get(i).ground().bounds())) {
      if ((int) each < i) {
        near.add((int) each);
      }
    }
    return near.stream().sorted().map(n -> claims.get(n).ground()).toList();
  }
}
