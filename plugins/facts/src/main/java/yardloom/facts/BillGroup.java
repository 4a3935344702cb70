package yardloom.facts;

/** The trades that lines of the bill belong to. */
public enum BillGroup {
  SHEET_MULCH("sheet mulch"),
  HARD_GOODS("hard goods"),
  /** Walls, fences, paving and sheds; no price for any of them fits another. */
  BUILT("built things"),
  /** Lime and sulfur that a soil test asks for. */
  SOIL("soil amendments"),
  PLANTS("plants"),
  TREES("trees and shrubs"),
  IRRIGATION("irrigation"),
  /** What the plan counts itself. */
  OWN("own items");

  private final String title;

  BillGroup(String title) {
    this.title = title;
  }

  /** The name that price books have after {@code any}. */
  public String title() {
    return title;
  }
}
