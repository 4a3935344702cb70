package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.UnitSystem;

/** Depths in words: for one surface, and what most surfaces of a kind have. */
public final class DepthNotes {
  private DepthNotes() {}

  /** Such as {@code 12 in chips / 1 in compost}; empty for bare ground. */
  static String of(MulchSurface s, UnitSystem units) {
    List<String> parts = new ArrayList<>();
    s.depth(Material.WOOD_CHIPS).ifPresent(d -> parts.add(Say.laid(d.value(), units) + " chips"));
    s.courses().stream()
        .filter(c -> c.material().isOwn())
        .forEach(
            c ->
                parts.add(
                    Say.laid(c.depth().orElseThrow().value(), units) + " " + c.material().title()));
    s.depth(Material.COMPOST).ifPresent(d -> parts.add(Say.laid(d.value(), units) + " compost"));
    return String.join(" / ", parts);
  }

  /** The note that most surfaces of each kind share, for the legend. */
  static Map<SurfaceKind, String> usual(List<MulchSurface> surfaces, UnitSystem units) {
    Map<SurfaceKind, Map<String, Integer>> counts = new EnumMap<>(SurfaceKind.class);
    for (MulchSurface s : surfaces) {
      counts.computeIfAbsent(s.kind(), k -> new TreeMap<>()).merge(of(s, units), 1, Integer::sum);
    }
    Map<SurfaceKind, String> usual = new EnumMap<>(SurfaceKind.class);
    counts.forEach(
        (kind, notes) ->
            usual.put(
                kind,
                notes.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .orElseThrow()
                    .getKey()));
    return usual;
  }
}
