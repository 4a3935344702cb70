package yardloom.water.line;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;

/**
 * What is dug for the lines; pipes of several zones share a trench.
 *
 * @param lines each between two forks or ends
 * @param length of all together
 * @param paved how much of it lies under paving, in sleeves
 * @param missed feeds that no way for pipe reaches
 */
public record Trenches(
    List<Line> lines, Derived<Length> length, Derived<Length> paved, List<String> missed) {
  /** The trenches of a plan with a tap and dripline. */
  public static final FactKey<Trenches> KEY =
      FactKey.one("water.trenches", Trenches.class).called("trenches for pipe");

  public Trenches {
    lines = List.copyOf(lines);
    missed = List.copyOf(missed);
  }
}
