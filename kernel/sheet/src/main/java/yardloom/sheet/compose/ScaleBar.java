package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;

/** The graphic scale: four parts of a round length, which stays true when a sheet is resized. */
public final class ScaleBar {
  private static final int PARTS = 4;
  private static final double MOST_PART_MM = 26;
  private static final double BAR_MM = 1.8;
  private static final double FOOT_M = 0.3048;
  private static final double[] STEPS = {200, 100, 50, 20, 10, 5, 2, 1, 0.5, 0.2};
  private static final Style DARK =
      Style.filled("bar-dark", Palette.INK).outlined(Palette.INK, 0.18);
  private static final Style LIGHT =
      Style.filled("bar-light", Palette.PAPER).outlined(Palette.INK, 0.18);

  private final double step;
  private final double partMm;
  private final String unit;

  /**
   * @param roomMm the bar is no longer than this
   */
  public ScaleBar(Scale scale, UnitSystem units, double roomMm) {
    double unitM = units == UnitSystem.US ? FOOT_M : 1;
    double chosen = STEPS[STEPS.length - 1];
    for (double candidate : STEPS) {
      if (scale.paperMm(candidate * unitM) <= Math.min(MOST_PART_MM, roomMm / PARTS)) {
        chosen = candidate;
        break;
      }
    }
    step = chosen;
    partMm = scale.paperMm(chosen * unitM);
    unit = units == UnitSystem.US ? "ft" : "m";
  }

  public double partMm() {
    return partMm;
  }

  public double step() {
    return step;
  }

  double widthMm() {
    return PARTS * partMm;
  }

  /** The bar with its left end at {@code x}; figures stand above it. */
  public List<Ink> at(double x, double y) {
    List<Ink> inks = new ArrayList<>();
    double barTop = y + Type.pitch(Type.BODY);
    for (int i = 0; i < PARTS; i++) {
      inks.add(
          Ink.Path.box(i % 2 == 0 ? DARK : LIGHT, new Box(x + i * partMm, barTop, partMm, BAR_MM)));
    }
    for (int i = 0; i <= PARTS; i++) {
      if (i == 1 || i == 3) {
        continue;
      }
      String text = number(i * step) + (i == PARTS ? " " + unit : "");
      inks.add(Type.line(text, x + i * partMm, y, Type.BODY, false, Ink.Align.MIDDLE));
    }
    return List.of(Ink.Group.of("scale-bar", "Graphic scale", inks));
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.valueOf((long) value)
        : String.valueOf(Math.rint(value * 10) / 10);
  }
}
