package yardloom.kernel.paint;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardloom.kernel.draw.Painter;

/** The painters of what a plan holds without any plugin. */
public final class KernelPainters {
  /** The layers by which anybody finds their way in the yard: what stands and lies there. */
  public static final Set<String> YARD =
      Set.of(
          "kernel.bed",
          "kernel.building",
          "kernel.fence",
          "kernel.keep-out",
          "kernel.labels",
          "kernel.lot",
          "kernel.lot-line",
          "kernel.path",
          "kernel.paving",
          "kernel.structure",
          "kernel.swale",
          "kernel.tree");

  private KernelPainters() {}

  /** {@link #YARD} and more layers, for a sheet of its own subject. */
  public static Set<String> yardWith(String... more) {
    return Stream.concat(YARD.stream(), Stream.of(more)).collect(Collectors.toUnmodifiableSet());
  }

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
