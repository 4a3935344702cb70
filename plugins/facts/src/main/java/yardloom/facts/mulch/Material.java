package yardloom.facts.mulch;

/** What a layer of a sheet-mulch stack is made of. */
public enum Material {
  CARDBOARD("cardboard"),
  COMPOST("compost"),
  DRIPLINE("dripline"),
  WOOD_CHIPS("wood-chip mulch");

  private final String title;

  Material(String title) {
    this.title = title;
  }

  /** The name that bills and tables print; also the key of data tables. */
  public String title() {
    return title;
  }
}
