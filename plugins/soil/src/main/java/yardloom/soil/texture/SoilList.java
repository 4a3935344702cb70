package yardloom.soil.texture;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.kernel.spi.Catalogue;
import yardloom.soil.texture.formula.Range;
import yardloom.soil.texture.formula.TextureClass;

/** The textures that plans may name, for a reader. */
public final class SoilList {
  private static final double USUAL_ORGANIC_PERCENT = 3;

  private SoilList() {}

  /** From light to heavy, with the water that they hold for plants at 1.5 to 5 % organic matter. */
  public static Catalogue soils() {
    return new Catalogue(
        "soils",
        "Textures that plans may name",
        List.of(TextureClass.values()).stream().map(SoilList::row).toList());
  }

  private static Catalogue.Row row(TextureClass texture) {
    return new Catalogue.Row(
        texture.title(),
        Map.of(
            "available",
            SoilWaterData.availableShare(texture, USUAL_ORGANIC_PERCENT)
                .map(SoilList::text)
                .orElse("")));
  }

  private static String text(Range share) {
    return String.format(
        Locale.ROOT,
        "%.2f to %.2f of its depth is water for plants (%s)",
        share.low(),
        share.high(),
        share.source().cite());
  }
}
