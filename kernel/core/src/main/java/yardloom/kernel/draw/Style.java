package yardloom.kernel.draw;

import java.util.regex.Pattern;

/**
 * How a kind of mark looks on paper; lengths are paper millimetres, whatever the scale.
 *
 * @param name class name written into the drawing file, lower case with hyphens
 * @param fill {@code #rrggbb}, or empty for none
 * @param hatch a pattern laid over the fill, so that a black-and-white print can be read
 * @param stroke {@code #rrggbb}, or empty for none
 * @param strokeMm line width, from the ISO 128 series 0.13 0.18 0.25 0.35 0.5 0.7
 * @param dash dash lengths as in SVG, such as {@code 3 1}; empty for a full line
 */
public record Style(
    String name, String fill, Hatch hatch, String stroke, double strokeMm, String dash) {

  /** Patterns that stay apart without colour. */
  public enum Hatch {
    NONE,
    DIAGONAL,
    DIAGONAL_BACK,
    CROSS,
    HORIZONTAL,
    VERTICAL,
    DOTS,
    SPARSE_DOTS,
    CHIPS,
    BRICK
  }

  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+");
  private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

  public Style {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("style name \"" + name + "\"");
    }
    for (String colour : new String[] {fill, stroke}) {
      if (!colour.isEmpty() && !COLOUR.matcher(colour).matches()) {
        throw new IllegalArgumentException("colour \"" + colour + "\" of style " + name);
      }
    }
  }

  public static Style filled(String name, String fill) {
    return new Style(name, fill, Hatch.NONE, "", 0, "");
  }

  public static Style line(String name, String stroke, double strokeMm) {
    return new Style(name, "", Hatch.NONE, stroke, strokeMm, "");
  }

  public Style outlined(String colour, double widthMm) {
    return new Style(name, fill, hatch, colour, widthMm, dash);
  }

  public Style hatched(Hatch pattern) {
    return new Style(name, fill, pattern, stroke, strokeMm, dash);
  }

  /**
   * The same for what is there already: a broken outline, where what is new has a full one (a
   * convention of site drawings; it stays apart in black and white).
   */
  public Style existing() {
    return new Style(name + "-existing", fill, hatch, stroke, strokeMm, "2 0.8");
  }

  public Style dashed(String pattern) {
    return new Style(name, fill, hatch, stroke, strokeMm, pattern);
  }
}
