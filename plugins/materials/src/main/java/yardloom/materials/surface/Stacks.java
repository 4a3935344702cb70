package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;

/** The different stacks of a plan, for the figure and the table of them. */
final class Stacks {
  private Stacks() {}

  /**
   * The surfaces of each different stack, by its kind, layers and when these are laid, in the order
   * of the surfaces.
   */
  static Map<String, List<MulchSurface>> of(List<MulchSurface> surfaces, UnitSystem units) {
    return by(surfaces, c -> layer(c, units) + ' ' + c.phase().id());
  }

  /** The same by kind and layers only: a section does not show when they are laid. */
  static Map<String, List<MulchSurface>> alike(List<MulchSurface> surfaces, UnitSystem units) {
    return by(surfaces, c -> layer(c, units));
  }

  /** Depths count as they are printed. */
  private static Map<String, List<MulchSurface>> by(
      List<MulchSurface> surfaces, Function<LaidLayer, String> layer) {
    Map<String, List<MulchSurface>> stacks = new LinkedHashMap<>();
    for (MulchSurface s : surfaces) {
      StringBuilder key = new StringBuilder(s.kind().title());
      s.courses().forEach(c -> key.append(", ").append(layer.apply(c)));
      stacks.computeIfAbsent(key.toString(), k -> new ArrayList<>()).add(s);
    }
    return stacks;
  }

  /** Such as {@code wood-chip mulch, 10 in}, or {@code dripline}. */
  static String layer(LaidLayer course, UnitSystem units) {
    return course.material().title()
        + course.depth().map(d -> ", " + Say.depth(d.value(), units)).orElse("");
  }
}
