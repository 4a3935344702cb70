package yardloom.sheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.UnitSystem;

/**
 * A sheet of paper, lying (landscape) unless turned.
 *
 * <p>The frame leaves 20 mm on the left for filing and 10 mm on the other sides.
 *
 * <p>References: [1] ISO 216, writing paper, A series, sizes as listed in course pages. [2] ANSI
 * and architectural sizes, Design Requirements Manual, NIH Office of Research Facilities, 2006,
 * section 3.2.1 (A, B, C, D). [3] ISO 5457:1999, frame margins (from memory, unverified).
 *
 * @param name how people call it, such as {@code ARCH C}
 */
public record Paper(String name, double widthMm, double heightMm) {
  private static final double INCH = 25.4;
  private static final double FILING_MARGIN_MM = 20;
  private static final double MARGIN_MM = 10;

  private static final List<Paper> ALL = sizes();

  private static List<Paper> sizes() {
    List<Paper> sizes = new ArrayList<>();
    int[][] iso = {{297, 210}, {420, 297}, {594, 420}, {841, 594}, {1189, 841}};
    for (int i = 0; i < iso.length; i++) {
      sizes.add(new Paper("A" + (4 - i), iso[i][0], iso[i][1]));
    }
    double[][] ansi = {{11, 8.5}, {17, 11}, {22, 17}, {34, 22}, {44, 34}};
    double[][] arch = {{12, 9}, {18, 12}, {24, 18}, {36, 24}, {48, 36}};
    for (int i = 0; i < 5; i++) {
      sizes.add(new Paper("ANSI " + (char) ('A' + i), ansi[i][0] * INCH, ansi[i][1] * INCH));
    }
    for (int i = 0; i < 5; i++) {
      sizes.add(new Paper("ARCH " + (char) ('A' + i), arch[i][0] * INCH, arch[i][1] * INCH));
    }
    return List.copyOf(sizes);
  }

  /** All sizes: ISO A4 to A0, ANSI A to E, ARCH A to E. */
  public static List<Paper> all() {
    return ALL;
  }

  /**
   * The size called {@code name}; case, spaces and hyphens do not matter.
   *
   * @throws PlanException (UNKNOWN_WORD) if there is none
   */
  public static Paper named(String name) {
    for (Paper paper : ALL) {
      if (key(paper.name).equals(key(name))) {
        return paper;
      }
    }
    List<String> names = ALL.stream().map(Paper::name).toList();
    throw new PlanException(
        ProblemCode.UNKNOWN_WORD,
        "there is no sheet size \""
            + name
            + "\"; sizes are "
            + String.join(", ", names)
            + Nearest.to(name, names).map(n -> ". Did you mean " + n + "?").orElse(""));
  }

  /** What plans are drawn on unless something else is asked for, in countries of these units. */
  public static Paper usual(UnitSystem units) {
    return named(units == UnitSystem.US ? "ARCH C" : "A2");
  }

  /** The page that offices print on, standing. */
  public static Paper page(UnitSystem units) {
    return named(units == UnitSystem.US ? "ANSI A" : "A4").portrait();
  }

  private static String key(String name) {
    return name.toUpperCase(Locale.ROOT).replaceAll("[ _-]", "");
  }

  /** The same sheet standing. */
  public Paper portrait() {
    return new Paper(name, Math.min(widthMm, heightMm), Math.max(widthMm, heightMm));
  }

  /** The room inside the frame line. */
  public Box frame() {
    return new Box(
        FILING_MARGIN_MM,
        MARGIN_MM,
        widthMm - FILING_MARGIN_MM - MARGIN_MM,
        heightMm - 2 * MARGIN_MM);
  }
}
