package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * Courses that should lead back to where they start.
 *
 * <p>Misclosure e = √(ΣLat² + ΣDep²); precision 1 : ΣL/e. The compass rule spreads the misclosure
 * over the courses in proportion to their lengths: the correction of a latitude is −ΣLat · Lᵢ/ΣL,
 * of a departure likewise. It suits angles and distances of like quality, and cannot repair a
 * blunder.
 *
 * <p>References: [1] J. Mahun, Open Access Surveying Library, Traverse Computations, chapters E, H
 * and J.
 *
 * @param courses at least two
 */
public record Traverse(List<Course> courses) {

  /** The northward and eastward part of one course. */
  public record Step(Length latitude, Length departure) {}

  public Traverse {
    courses = List.copyOf(courses);
    if (courses.size() < 2) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "a traverse needs at least two courses, got " + courses.size());
    }
  }

  /** The length of all courses together. */
  public Length total() {
    return sum(courses.stream().map(Course::distance).toList());
  }

  /** What the latitudes add up to; zero if they close. */
  public Length sumOfLatitudes() {
    return sum(courses.stream().map(Course::latitude).toList());
  }

  /** What the departures add up to; zero if they close. */
  public Length sumOfDepartures() {
    return sum(courses.stream().map(Course::departure).toList());
  }

  private static Length sum(List<Length> parts) {
    Length sum = Length.ZERO;
    for (Length part : parts) {
      sum = sum.plus(part);
    }
    return sum;
  }

  /** How far the last course ends from the start. */
  public Length misclosure() {
    return Length.metres(Math.hypot(sumOfLatitudes().metres(), sumOfDepartures().metres()));
  }

  /** The n of a precision of 1 : n; empty if the traverse closes to the nanometre. */
  public OptionalDouble precision() {
    double e = misclosure().metres();
    return e < 1e-9 ? OptionalDouble.empty() : OptionalDouble.of(total().metres() / e);
  }

  /** The course from where the last one ends back to the start. */
  public Course closing() {
    return Course.ofParts(sumOfLatitudes().negative(), sumOfDepartures().negative());
  }

  /** The parts of the courses as they were measured. */
  public List<Step> raw() {
    return courses.stream().map(c -> new Step(c.latitude(), c.departure())).toList();
  }

  /** The parts of the courses after the compass rule; they add up to zero. */
  public List<Step> balanced() {
    Length lat = sumOfLatitudes();
    Length dep = sumOfDepartures();
    double totalM = total().metres();
    List<Step> steps = new ArrayList<>();
    for (Course course : courses) {
      double share = course.distance().metres() / totalM;
      steps.add(
          new Step(
              course.latitude().minus(lat.times(share)),
              course.departure().minus(dep.times(share))));
    }
    return List.copyOf(steps);
  }

  /** The corners from {@code start} on: one per course, without the return to the start. */
  public static List<Point> corners(Point start, List<Step> steps) {
    List<Point> corners = new ArrayList<>();
    Point at = start;
    for (Step step : steps) {
      corners.add(at);
      at = at.moved(step.departure(), step.latitude());
    }
    return List.copyOf(corners);
  }
}
