package yardloom.kernel.paint;

import java.util.List;
import yardloom.kernel.draw.Painter;

/** The painters of what a plan holds without any plugin. */
public final class KernelPainters {
  private KernelPainters() {}

  /** All of them; the layers' order is that of {@link yardloom.kernel.draw.Layer}. */
  public static List<Painter> all() {
    return List.of(
        new LotPainter(),
        new ContourPainter(),
        new SetbackPainter(),
        new PavingPainter(),
        new PathPainter(),
        new BedPainter(),
        new BuildingPainter(),
        new StructurePainter(),
        new SwalePainter(),
        new FencePainter(),
        new UtilityPainter(),
        new KeepOutPainter(),
        new TreePainter(),
        new WaterPointPainter(),
        new RestrictionPainter(),
        new LotLinePainter(),
        new TapePointPainter(),
        new LabelPainter(),
        new DimensionPainter());
  }
}
