package yardloom.facts.mulch;

/** The kinds of ground that receive a stack of layers, in the order in which tables list them. */
public enum SurfaceKind {
  PATH("path"),
  TREE_RING("tree ring"),
  PERENNIAL_BED("perennial bed"),
  ANNUAL_BED("annual bed"),
  MULCHED_GROUND("mulched ground");

  private final String title;

  SurfaceKind(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }
}
