package yardloom.program.sitefile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.draw.Logo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A transformation of SVG: x' = a·x + c·y + e, y' = b·x + d·y + f.
 *
 * <p>References: [1] Scalable Vector Graphics (SVG) 1.1 (Second Edition), W3C, 2011, section 7.6.
 */
record SvgTransform(double a, double b, double c, double d, double e, double f) {
  private static final Pattern STEP = Pattern.compile("\\s*([a-z]+)\\s*\\(([^)]*)\\)[\\s,]*");

  static SvgTransform moved(double x, double y) {
    return new SvgTransform(1, 0, 0, 1, x, y);
  }

  /**
   * What the attribute says, its last step first.
   *
   * @throws PlanException (FORBIDDEN) for skews and whatever is none of the standard's steps
   */
  static SvgTransform of(String text) {
    SvgTransform all = moved(0, 0);
    Matcher step = STEP.matcher(text);
    int end = 0;
    while (end < text.length() && step.find(end) && step.start() == end) {
      all = all.then(one(step.group(1), SvgLogo.numbers(step.group(2)), text));
      end = step.end();
    }
    if (!text.substring(end).isBlank()) {
      throw unknown(text);
    }
    return all;
  }

  private static SvgTransform one(String name, double[] n, String text) {
    switch (name + n.length) {
      case "matrix6":
        return new SvgTransform(n[0], n[1], n[2], n[3], n[4], n[5]);
      case "translate1":
        return moved(n[0], 0);
      case "translate2":
        return moved(n[0], n[1]);
      case "scale1":
        return new SvgTransform(n[0], 0, 0, n[0], 0, 0);
      case "scale2":
        return new SvgTransform(n[0], 0, 0, n[1], 0, 0);
      case "rotate1":
        double turn = StrictMath.toRadians(n[0]);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        return new SvgTransform(cos, sin, -sin, cos, 0, 0);
      case "rotate3":
        return moved(n[1], n[2])
            .then(one("rotate", new double[] {n[0]}, text))
            .then(moved(-n[1], -n[2]));
      default:
        throw unknown(text);
    }
  }

  private static PlanException unknown(String text) {
    return new PlanException(
        ProblemCode.FORBIDDEN,
        "the logo has the transform '"
            + text
            + "'; it may have matrix, translate, scale and rotate");
  }

  /** This after {@code inner}: what a member of a transformed group undergoes. */
  SvgTransform then(SvgTransform inner) {
    return new SvgTransform(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  Logo.Dot of(Logo.Dot dot) {
    return new Logo.Dot(a * dot.x() + c * dot.y() + e, b * dot.x() + d * dot.y() + f);
  }
}
