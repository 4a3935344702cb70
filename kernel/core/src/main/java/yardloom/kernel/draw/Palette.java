package yardloom.kernel.draw;

import java.util.List;
import yardloom.kernel.draw.Style.Hatch;

/**
 * The colours and styles of the kernel's own drawings.
 *
 * <p>Ground and works are pale tints with a hatch, so that a black-and-white print can be read and
 * dark text keeps its contrast on them; {@link #CODES} serve where colour is a code.
 *
 * <p>References: [1] M. Okabe, K. Ito, Color Universal Design, 2008: the eight colours, as listed
 * in the R package colorblindr, palettes.R. [2] ISO 128-20 line widths as stated in DIN EN ISO
 * 128-20: 0.13 0.18 0.25 0.35 0.5 0.7.
 */
public final class Palette {
  /** Text and main outlines. */
  public static final String INK = "#1d2722";

  /** Secondary text; at least 4.5:1 on white and on every tint. */
  public static final String MUTED = "#4a554f";

  /** Hairlines of tables and grids. */
  public static final String RULE = "#b9c1bb";

  /** Behind every other row, and behind captions. */
  public static final String SHADE = "#f3f5f1";

  public static final String PAPER = "#ffffff";

  /** Cautions and errors; text colour. */
  public static final String ALERT = "#a33a00";

  /** Okabe-Ito: orange, sky, green, yellow, blue, vermilion, purple, black. Fills, never text. */
  public static final List<String> CODES =
      List.of(
          "#e69f00", "#56b4e9", "#009e73", "#f0e442", "#0072b2", "#d55e00", "#cc79a7", "#000000");

  public static final Style LOT = Style.filled("lot", "#f7f6ee");
  public static final Style LOT_LINE =
      Style.line("lot-line", INK, 0.7).dashed("12 1.5 2 1.5 2 1.5");
  public static final Style SETBACK = Style.line("setback", "#7a5c1e", 0.25).dashed("4 1.2");
  public static final Style BUILDING =
      Style.filled("building", "#d9d5cd").hatched(Hatch.DIAGONAL).outlined(INK, 0.5);
  public static final Style NEIGHBOUR =
      Style.filled("neighbour", "#ececea").outlined("#6b726d", 0.25);
  public static final Style EAVES = Style.line("eaves", "#4a554f", 0.18).dashed("2 1");
  public static final Style STRUCTURE =
      Style.filled("structure", "#e6dfd0").hatched(Hatch.DIAGONAL_BACK).outlined(INK, 0.35);
  public static final Style FENCE = Style.line("fence", "#5b4a2f", 0.35);
  public static final Style PAVING =
      Style.filled("paving", "#e4e4e1").hatched(Hatch.SPARSE_DOTS).outlined("#6b726d", 0.25);
  public static final Style PATH =
      Style.filled("path", "#efe3cc").hatched(Hatch.CHIPS).outlined("#8a7344", 0.18);
  public static final Style MULCHED_GROUND =
      Style.filled("mulched-ground", "#f4ebda").hatched(Hatch.DOTS).outlined("#8a7344", 0.18);
  public static final Style BED = Style.filled("bed", "#dfe9d2").outlined("#3f6212", 0.35);
  public static final Style TREE = Style.filled("tree", "").outlined("#2f6b3a", 0.25);
  public static final Style WATER_POINT =
      Style.filled("water-point", "#0072b2").outlined(INK, 0.18);
  public static final Style UTILITY = Style.line("utility", ALERT, 0.35).dashed("6 1.2 0.8 1.2");
  public static final Style CLEARANCE =
      Style.line("utility-clearance", ALERT, 0.18).dashed("1.5 1");
  public static final Style KEEP_OUT =
      Style.filled("keep-out", "").hatched(Hatch.CROSS).outlined("#6b4f4f", 0.25).dashed("3 1");
  public static final Style SIGHT = Style.line("sight-triangle", "#5b3f8c", 0.35).dashed("5 1 1 1");
  public static final Style EASEMENT = Style.line("easement", MUTED, 0.35).dashed("4 2");
  public static final Style HIGH_SETBACK =
      Style.line("high-setback", "#7a5c1e", 0.25).dashed("1.2 1.2");
  public static final Style ROOTS = Style.line("roots", "#2f6b3a", 0.18).dashed("1.5 1");
  public static final Style SWALE =
      Style.filled("swale", "#e1ecf2").outlined("#2b5f7d", 0.25).dashed("3 1");
  public static final Style SWALE_BOTTOM =
      Style.filled("swale-bottom", "#cbdfe9").outlined("#2b5f7d", 0.18);
  public static final Style FLOW = Style.filled("flow", "#2b5f7d").outlined("#2b5f7d", 0.25);
  public static final Style SET_OUT_POINT = Style.filled("set-out-point", INK);
  public static final Style TAPE_POINT = Style.filled("tape-point", PAPER).outlined(INK, 0.35);
  public static final Style FINDING_ERROR = Style.line("finding-error", "#b3261e", 0.7);
  public static final Style FINDING_WARNING =
      Style.line("finding-warning", "#b35900", 0.5).dashed("3 1");

  private Palette() {}
}
