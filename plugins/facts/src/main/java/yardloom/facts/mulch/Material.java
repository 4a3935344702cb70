package yardloom.facts.mulch;

import java.util.Comparator;
import java.util.List;

/**
 * What a layer of a sheet-mulch stack is made of. In order as layers lie from the ground up.
 *
 * @param title the name that bills and tables print; also the key of data tables
 */
public record Material(Kind kind, String title) implements Comparable<Material> {
  public static final Material CARDBOARD = new Material(Kind.CARDBOARD, "cardboard");
  public static final Material COMPOST = new Material(Kind.COMPOST, "compost");
  public static final Material DRIPLINE = new Material(Kind.DRIPLINE, "dripline");
  public static final Material WOOD_CHIPS = new Material(Kind.WOOD_CHIPS, "wood-chip mulch");

  /** Those that need no word of the plan, from the ground up. */
  public static final List<Material> SHIPPED = List.of(CARDBOARD, COMPOST, DRIPLINE, WOOD_CHIPS);

  private static final Comparator<Material> ORDER =
      Comparator.comparing(Material::kind).thenComparing(Material::title);

  /** The kinds, from the ground up. */
  public enum Kind {
    CARDBOARD,
    COMPOST,
    OWN,
    DRIPLINE,
    WOOD_CHIPS
  }

  /** A bulk material that a plan or its region names. */
  public static Material own(String title) {
    return new Material(Kind.OWN, title);
  }

  /** Whether a plan or its region names it. */
  public boolean isOwn() {
    return kind == Kind.OWN;
  }

  @Override
  public int compareTo(Material other) {
    return ORDER.compare(this, other);
  }
}
