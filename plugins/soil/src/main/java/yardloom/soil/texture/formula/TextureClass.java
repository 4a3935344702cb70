package yardloom.soil.texture.formula;

/**
 * The twelve texture classes of the US soil survey, coarse to fine.
 *
 * <p>References: as {@link TextureRule}.
 */
public enum TextureClass {
  SAND("sand"),
  LOAMY_SAND("loamy sand"),
  SANDY_LOAM("sandy loam"),
  LOAM("loam"),
  SILT_LOAM("silt loam"),
  SILT("silt"),
  SANDY_CLAY_LOAM("sandy clay loam"),
  CLAY_LOAM("clay loam"),
  SILTY_CLAY_LOAM("silty clay loam"),
  SANDY_CLAY("sandy clay"),
  SILTY_CLAY("silty clay"),
  CLAY("clay");

  private final String title;

  TextureClass(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }

  /** Sands and sandy loams, which drain and dry fast. */
  public boolean isCoarse() {
    return this == SAND || this == LOAMY_SAND || this == SANDY_LOAM;
  }

  /** Clays and clay loams, which drain slowly. */
  public boolean isHeavy() {
    return ordinal() >= SANDY_CLAY_LOAM.ordinal();
  }
}
