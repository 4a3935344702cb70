package yardloom.sheet.svg;

import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;

/** The patterns and clips that a sheet needs, each once. */
record Definitions(SortedMap<String, Style> patterns, Set<Box> clips) {

  void collect(Ink ink) {
    if (ink instanceof Ink.Group group) {
      if (!group.inks().isEmpty()) {
        group.clip().ifPresent(clips::add);
      }
      group.inks().forEach(this::collect);
    } else if (ink instanceof Ink.Path path) {
      collect(path.style());
    } else if (ink instanceof Ink.Circle circle) {
      collect(circle.style());
    }
  }

  private void collect(Style style) {
    if (style.hatch() != Hatch.NONE) {
      patterns.put(key(style), style);
    }
  }

  /** Hatches are drawn in the colour of the outline. */
  static String colour(Style style) {
    return style.stroke().isEmpty() ? Palette.MUTED : style.stroke();
  }

  static String key(Style style) {
    String hatch = style.hatch().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return "hatch-" + hatch + "-" + colour(style).substring(1);
  }
}
