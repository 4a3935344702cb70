package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;

/**
 * Divides a shape among claims, so that every square metre is counted once and the parts add up to
 * the whole.
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
    List<Part> parts = new ArrayList<>();
    Shape left = whole;
    for (Claim claim : claims) {
      parts.add(new Part(claim.name(), left.and(claim.ground())));
      left = left.minus(claim.ground());
    }
    parts.add(new Part(rest, left));
    return List.copyOf(parts);
  }
}
