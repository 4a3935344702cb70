package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.MulchSurface;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;

/** The different stacks of a plan, for the figure and the table of them. */
final class Stacks {
  private Stacks() {}

  /** The surfaces of each different stack, by its kind and layers, in the order of the surfaces. */
  static Map<String, List<MulchSurface>> of(List<MulchSurface> surfaces, UnitSystem units) {
    Map<String, List<MulchSurface>> stacks = new LinkedHashMap<>();
    surfaces.forEach(s -> stacks.computeIfAbsent(key(s, units), k -> new ArrayList<>()).add(s));
    return stacks;
  }

  /** Equal for surfaces of the same kind with the same layers, as depths are printed. */
  private static String key(MulchSurface s, UnitSystem units) {
    StringBuilder key = new StringBuilder(s.kind().title());
    for (LaidLayer c : s.courses()) {
      key.append(", ").append(layer(c, units)).append(' ').append(c.phase().id());
    }
    return key.toString();
  }

  /** Such as {@code wood-chip mulch, 10 in}, or {@code dripline}. */
  static String layer(LaidLayer course, UnitSystem units) {
    return course.material().title()
        + course.depth().map(d -> ", " + Say.depth(d.value(), units)).orElse("");
  }
}
