package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.unit.Length;

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
    Nearby nearby = new Nearby(claims.stream().map(Claim::ground).toList());
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < claims.size(); i++) {
      Claim claim = claims.get(i);
      int present = i;
      List<Shape> earlier =
          nearby.to(claim.ground(), Length.ZERO).stream()
              .filter(n -> n < present)
              .map(n -> claims.get(n).ground())
              .toList();
      Shape ground = whole.and(claim.ground());
      parts.add(
          new Part(claim.name(), earlier.isEmpty() ? ground : ground.minus(Shape.union(earlier))));
    }
    parts.add(
        new Part(rest, whole.minus(Shape.union(claims.stream().map(Claim::ground).toList()))));
    return List.copyOf(parts);
  }
}
