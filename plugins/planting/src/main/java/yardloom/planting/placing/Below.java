package yardloom.planting.placing;

/** What covers the ground below a tree. */
public enum Below {
  /** Mulch or bare soil, which draw next to nothing. */
  MULCH,
  /** Mown grass or another living cover. */
  GRASS
}
