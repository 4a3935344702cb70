package yardloom.kernel.draw;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;

/**
 * A firm's mark: filled outlines in units of its own, y downwards. It has no text, no picture of
 * dots and nothing from elsewhere, so that it is as sharp on paper as every line of the sheet.
 *
 * @param width of its field
 * @param height of its field
 * @param pieces painted one after the other
 */
public record Logo(double width, double height, List<Piece> pieces) {
  /** What the plan says, the plan's own file before those that it includes; absent for none. */
  public static final AttributeKey<Logo> KEY = new AttributeKey<>("draw.logo", Logo.class);

  /** A corner of an outline. */
  public record Dot(double x, double y) {}

  /**
   * One area; where its rings lie in each other the same way round all is filled.
   *
   * @param fill {@code #rrggbb}
   */
  public record Piece(String fill, List<List<Dot>> rings) {
    public Piece {
      rings = rings.stream().map(List::copyOf).toList();
    }
  }

  public Logo {
    pieces = List.copyOf(pieces);
  }
}
