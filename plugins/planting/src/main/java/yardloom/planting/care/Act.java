package yardloom.planting.care;

/** The kinds of things that are done for plants. */
public enum Act {
  PLANT,
  SOW,
  WATER,
  PRUNE,
  FEED,
  DIVIDE,
  THIN,
  NET,
  WEED,
  MULCH,
  PICK,
  WINTER
}
