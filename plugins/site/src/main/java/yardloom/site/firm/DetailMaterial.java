package yardloom.site.firm;

import java.util.Locale;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.vocab.Choices;

/** What the pieces of a detail are made of; each differs from the others without colour. */
public enum DetailMaterial {
  SOIL("#e9dfd0", Hatch.DIAGONAL),
  COMPOST("#cdbfa6", Hatch.DOTS),
  CHIPS("#efe3cc", Hatch.CHIPS),
  WOOD("#ead8b8", Hatch.HORIZONTAL),
  GRAVEL("#e4e4e1", Hatch.SPARSE_DOTS),
  STONE("#d9d5cd", Hatch.DIAGONAL_BACK),
  BRICK("#ecd6cb", Hatch.BRICK),
  CONCRETE("#ececea", Hatch.CROSS),
  METAL("#d3d8dc", Hatch.VERTICAL),
  WATER("#cbdfe9", Hatch.NONE),
  CARDBOARD("#d8c6a4", Hatch.NONE),
  AIR("", Hatch.NONE);

  private static final double LINE_MM = 0.35;

  private final Style style;

  DetailMaterial(String fill, Hatch hatch) {
    this.style =
        Style.filled("detail-" + name().toLowerCase(Locale.ROOT), fill)
            .hatched(hatch)
            .outlined(Palette.INK, LINE_MM);
  }

  Style style() {
    return style;
  }

  LegendEntry legend() {
    return LegendEntry.area(Choices.text(this), style);
  }
}
