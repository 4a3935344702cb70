package yardloom.program.sitefile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.draw.Logo.Dot;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * Outlines of SVG as rings of corners; curves become {@link #PIECES} chords each, which no eye
 * tells from the curve on a logo of 14 mm.
 *
 * <p>References: [1] Scalable Vector Graphics (SVG) 1.1 (Second Edition), W3C, 2011, section 8.3:
 * letters in capitals have absolute coordinates, small ones relative; S and T mirror the last
 * control point. [2] Bézier curves by their Bernstein form.
 */
final class SvgPathData {
  static final int PIECES = 12;
  private static final int SIDES = 48;
  private static final Pattern TOKEN =
      Pattern.compile("([a-zA-Z])|([-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,2})?)");
  private static final Pattern BETWEEN = Pattern.compile("[\\s,]*");

  private final List<String> tokens = new ArrayList<>();
  private final List<List<Dot>> rings = new ArrayList<>();
  private List<Dot> ring = new ArrayList<>();
  private Dot at = new Dot(0, 0);
  private Dot start = at;

  /** The last control point, for curves that go on smoothly; null after other steps. */
  private Dot control;

  private int next;

  /**
   * @throws PlanException (SYNTAX) if it is no path data, (FORBIDDEN) if it has elliptical arcs
   */
  SvgPathData(String data) {
    Matcher token = TOKEN.matcher(data);
    int end = 0;
    while (token.find()) {
      if (!BETWEEN.matcher(data.substring(end, token.start())).matches()) {
        throw broken(data.substring(end, token.start()));
      }
      tokens.add(token.group());
      end = token.end();
    }
    if (!BETWEEN.matcher(data.substring(end)).matches()) {
      throw broken(data.substring(end));
    }
  }

  List<List<Dot>> rings() {
    char step = ' ';
    while (next < tokens.size()) {
      char first = tokens.get(next).charAt(0);
      if (Character.isLetter(first)) {
        step = first;
        next++;
      } else if (step == 'M' || step == 'm') {
        step = step == 'M' ? 'L' : 'l';
      } else if (step == ' ' || step == 'Z' || step == 'z') {
        throw broken(tokens.get(next));
      }
      take(step);
    }
    endRing();
    return rings;
  }

  private void take(char step) {
    boolean relative = Character.isLowerCase(step);
    Dot before = control;
    control = null;
    switch (Character.toUpperCase(step)) {
      case 'M' -> {
        endRing();
        at = dot(relative);
        start = at;
        ring.add(at);
      }
      case 'L' -> to(dot(relative));
      case 'H' -> to(new Dot(number() + (relative ? at.x() : 0), at.y()));
      case 'V' -> to(new Dot(at.x(), number() + (relative ? at.y() : 0)));
      case 'C' -> curve(List.of(at, dot(relative), dot(relative), dot(relative)));
      case 'S' -> curve(List.of(at, mirrored(before), dot(relative), dot(relative)));
      case 'Q' -> curve(List.of(at, dot(relative), dot(relative)));
      case 'T' -> curve(List.of(at, mirrored(before), dot(relative)));
      case 'Z' -> {
        endRing();
        at = start;
        ring.add(at);
      }
      case 'A' ->
          throw new PlanException(
              ProblemCode.FORBIDDEN,
              "the logo's path has an elliptical arc (A); save it with curves (C) instead");
      default -> throw broken(String.valueOf(step));
    }
  }

  private Dot mirrored(Dot last) {
    return last == null ? at : new Dot(2 * at.x() - last.x(), 2 * at.y() - last.y());
  }

  private void to(Dot dot) {
    at = dot;
    ring.add(dot);
  }

  private void curve(List<Dot> points) {
    for (int i = 1; i <= PIECES; i++) {
      ring.add(onCurve(points, (double) i / PIECES));
    }
    control = points.get(points.size() - 2);
    at = points.get(points.size() - 1);
  }

  /** De Casteljau: points between points between points. */
  private static Dot onCurve(List<Dot> points, double t) {
    List<Dot> now = points;
    while (now.size() > 1) {
      List<Dot> between = new ArrayList<>();
      for (int i = 1; i < now.size(); i++) {
        Dot a = now.get(i - 1);
        Dot b = now.get(i);
        between.add(new Dot(a.x() + (b.x() - a.x()) * t, a.y() + (b.y() - a.y()) * t));
      }
      now = between;
    }
    return now.get(0);
  }

  private void endRing() {
    if (ring.size() > 2) {
      rings.add(List.copyOf(ring));
    }
    ring = new ArrayList<>();
  }

  private Dot dot(boolean relative) {
    double x = number();
    double y = number();
    return relative ? new Dot(at.x() + x, at.y() + y) : new Dot(x, y);
  }

  private double number() {
    if (next >= tokens.size() || Character.isLetter(tokens.get(next).charAt(0))) {
      throw broken(next >= tokens.size() ? "its end" : tokens.get(next));
    }
    return Double.parseDouble(tokens.get(next++));
  }

  private static PlanException broken(String where) {
    return new PlanException(
        ProblemCode.SYNTAX, "the logo's path cannot be read at '" + where.strip() + "'");
  }

  static List<List<Dot>> polygon(double[] n) {
    List<Dot> corners = new ArrayList<>();
    for (int i = 1; i < n.length; i += 2) {
      corners.add(new Dot(n[i - 1], n[i]));
    }
    return corners.size() > 2 ? List.of(corners) : List.of();
  }

  static List<List<Dot>> rectangle(double x, double y, double width, double height) {
    return width > 0 && height > 0
        ? polygon(new double[] {x, y, x + width, y, x + width, y + height, x, y + height})
        : List.of();
  }

  static List<List<Dot>> ellipse(double x, double y, double across, double up) {
    if (!(across > 0 && up > 0)) {
      return List.of();
    }
    List<Dot> around = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      double turn = 2 * Math.PI * i / SIDES;
      around.add(new Dot(x + across * StrictMath.cos(turn), y + up * StrictMath.sin(turn)));
    }
    return List.of(around);
  }

  /**
   * Rings that fill by the even-odd rule, turned so that those within others run the other way:
   * then both rules fill the same. Rings that cross each other may differ.
   */
  static List<List<Dot>> alternate(List<List<Dot>> all) {
    List<List<Dot>> turned = new ArrayList<>();
    for (List<Dot> one : all) {
      long around =
          all.stream().filter(other -> other != one && isWithin(one.get(0), other)).count();
      boolean wanted = around % 2 == 0;
      List<Dot> copy = new ArrayList<>(one);
      if (area(one) > 0 != wanted) {
        Collections.reverse(copy);
      }
      turned.add(copy);
    }
    return turned;
  }

  private static double area(List<Dot> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Dot a = ring.get(i);
      Dot b = ring.get((i + 1) % ring.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }

  private static boolean isWithin(Dot dot, List<Dot> ring) {
    boolean within = false;
    for (int i = 0; i < ring.size(); i++) {
      Dot a = ring.get(i);
      Dot b = ring.get((i + 1) % ring.size());
      boolean spans = a.y() > dot.y() != b.y() > dot.y();
      if (spans && dot.x() < a.x() + (b.x() - a.x()) * (dot.y() - a.y()) / (b.y() - a.y())) {
        within = !within;
      }
    }
    return within;
  }
}
