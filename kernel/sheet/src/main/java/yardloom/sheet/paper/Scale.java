package yardloom.sheet.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.unit.UnitSystem;

/**
 * A drawing scale 1:n with the words for it.
 *
 * <p>References: [1] Design Requirements Manual, NIH Office of Research Facilities, 2006, section
 * 3.2.1: plot factors of architect's and engineer's scales. [2] ISO 5455 series 1:2, 1:5, 1:10
 * (from memory, unverified). 1:250, 1:300 and 1:400 stand on metric scale rulers: common practice,
 * no source.
 *
 * @param denominator n in 1:n
 * @param words how the title block writes it
 */
public record Scale(double denominator, String words) implements Comparable<Scale> {
  private static final List<Scale> US =
      List.of(
          architect("1/2", 24),
          architect("1/4", 48),
          architect("1/8", 96),
          engineer(10),
          architect("1/16", 192),
          engineer(20),
          engineer(30),
          engineer(40),
          engineer(50),
          engineer(60),
          engineer(100),
          engineer(200));
  private static final List<Scale> METRIC =
      List.of(
          metric(20),
          metric(50),
          metric(100),
          metric(200),
          metric(250),
          metric(300),
          metric(400),
          metric(500),
          metric(1000),
          metric(2000));

  public Scale {
    if (!(denominator > 0) || Double.isInfinite(denominator)) {
      throw new IllegalArgumentException("a scale 1:n needs a positive n, got " + denominator);
    }
  }

  /** One inch on paper for so many feet on the ground. */
  public static Scale engineer(int feetPerInch) {
    return new Scale(12.0 * feetPerInch, "1\" = " + feetPerInch + "'");
  }

  /** A part of an inch on paper for each foot on the ground. */
  private static Scale architect(String inches, int denominator) {
    return new Scale(denominator, inches + "\" = 1'-0\"");
  }

  /** 1:n. */
  public static Scale metric(double denominator) {
    return new Scale(denominator, "1:" + trimmed(denominator));
  }

  /** The usual scale with this denominator in the words of {@code units}, else 1:n. */
  public static Scale of(double denominator, UnitSystem units) {
    return usual(units).stream()
        .filter(s -> s.denominator == denominator)
        .findFirst()
        .orElseGet(() -> metric(denominator));
  }

  /** The scales that are chosen from automatically, largest drawing first. */
  public static List<Scale> usual(UnitSystem units) {
    return units == UnitSystem.US ? US : METRIC;
  }

  /** Round scales from 1:20 to 1:190, largest first, at which a picture may stand. */
  public static List<Scale> ofPictures() {
    return IntStream.rangeClosed(2, 19).mapToObj(tens -> metric(10.0 * tens)).toList();
  }

  /** The first of {@code choices}, from large drawings to small, in which the drawing fits. */
  public static Optional<Scale> largestFitting(
      List<Scale> choices, double widthM, double heightM, double roomWidthMm, double roomHeightMm) {
    return choices.stream()
        .sorted()
        .filter(s -> s.paperMm(widthM) <= roomWidthMm && s.paperMm(heightM) <= roomHeightMm)
        .findFirst();
  }

  /** Millimetres on paper for metres on the ground. */
  public double paperMm(double metres) {
    return metres * 1000 / denominator;
  }

  private static String trimmed(double n) {
    return n == Math.rint(n) ? String.valueOf((long) n) : String.format(Locale.ROOT, "%.1f", n);
  }

  @Override
  public int compareTo(Scale other) {
    return Double.compare(denominator, other.denominator);
  }
}
