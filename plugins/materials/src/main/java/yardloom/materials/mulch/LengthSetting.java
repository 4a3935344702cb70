package yardloom.materials.mulch;

import yardloom.kernel.plan.Element;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * The lengths that the block {@code sheetMulch} can set, each with its default and range.
 *
 * <p>Ranges are limits of sense (a typing error such as feet for inches), not advice.
 */
public enum LengthSetting {
  CARDBOARD_OVERLAP("cardboard overlap", 6, 0, 24, Practice.OVERLAP),
  SHEET_LENGTH("cardboard length", 48, 6, 240, Practice.SHEET),
  SHEET_WIDTH("cardboard width", 36, 6, 240, Practice.SHEET),
  PERENNIAL_MULCH("chips perennial", 10, 0, 24, Practice.DEEP_CHIPS),
  ANNUAL_MULCH("chips annual", 2, 0, 24, Practice.ANNUAL_CHIPS),
  PATH_MULCH("chips path", 4, 0, 24, Practice.PATH_CHIPS),
  TREE_RING_MULCH("chips treeRing", 4, 0, 24, Practice.TREE_CHIPS),
  TREE_RING_WIDTH("chips ringWidth", 36, 0, 240, Practice.RING),
  PERENNIAL_COMPOST("compost perennial", 1, 0, 24, Practice.POCKETS),
  ANNUAL_COMPOST("compost annual", 3, 0, 24, Practice.ANNUAL_COMPOST),
  TRUNK_GAP("gaps trunk", 6, 0, 36, Practice.TREE_CHIPS),
  WALL_GAP("gaps wall", 12, 0, 60, Practice.WALL),
  EDGE_TAPER("chips edgeTaper", 0, 0, 60, Practice.TAPER),
  GROUND_MULCH("chips ground", 4, 0, 24, Practice.GROUND),
  GROUND_COMPOST("compost ground", 0, 0, 24, Practice.NO_COMPOST);

  private final String word;
  private final Length fallback;
  private final Length least;
  private final Length most;
  private final Source source;

  LengthSetting(String word, double inches, double leastIn, double mostIn, Source source) {
    this.word = word;
    this.fallback = Length.inches(inches);
    this.least = Length.inches(leastIn);
    this.most = Length.inches(mostIn);
    this.source = source;
  }

  /** How deep chips usually lie on a bed of its use. */
  public static LengthSetting ofBed(Element.Bed bed) {
    return bed.use() == Element.BedUse.ANNUAL ? ANNUAL_MULCH : PERENNIAL_MULCH;
  }

  /** The word and its option in scripts. */
  public String word() {
    return word;
  }

  public Length fallback() {
    return fallback;
  }

  public Length least() {
    return least;
  }

  public Length most() {
    return most;
  }

  /** Where the default comes from. */
  public Source source() {
    return source;
  }

  /** Sources of the defaults; apart, because an enum cannot name its own constants first. */
  private static final class Practice {
    static final Source OVERLAP =
        Source.commonPractice("cardboard laps 6 in or more; 6 to 8 in is usual");
    static final Source SHEET = Source.commonPractice("an opened box of about 4 ft by 3 ft");
    static final Source DEEP_CHIPS =
        Source.commonPractice("about a foot of chips over cardboard; 8 to 12 in as laid");
    static final Source ANNUAL_CHIPS =
        Source.commonPractice("a thin mulch between annual vegetables");
    static final Source PATH_CHIPS = Source.commonPractice("3 to 4 in of chips on garden paths");
    static final Source TREE_CHIPS =
        Source.read(
            "Mulching trees with wood chips: 3-4 in on well-drained soil, 2-3 in on heavy soil, at"
                + " least 6 in from the trunk",
            "Iowa State University Extension, horticulture news",
            0,
            "");
    static final Source RING = Source.commonPractice("a mulched ring of 3 ft about a tree");
    static final Source POCKETS =
        Source.commonPractice("perennials stand in pockets of compost; an inch over the bed");
    static final Source ANNUAL_COMPOST =
        Source.commonPractice("annual vegetables start in 2 to 4 in of compost");
    static final Source WALL =
        Source.read(
            "Termite notes: no soil disturbance or mulch within 12 in of the foundation",
            "North Carolina State University Extension",
            0,
            "");
    static final Source GROUND =
        Source.commonPractice("4 in of chips over cardboard on lawn that is not planted");
    static final Source NO_COMPOST = Source.commonPractice("no compost where nothing is planted");
    static final Source TAPER = Source.commonPractice("edges cut square against an edging");
  }
}
