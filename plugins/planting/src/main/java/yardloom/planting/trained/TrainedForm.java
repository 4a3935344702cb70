package yardloom.planting.trained;

/** How a fruit tree is kept narrow. */
public enum TrainedForm {
  /** Tiers of level branches along wires or a wall. */
  ESPALIER,
  /** Branches spread from a short trunk, flat against a wall. */
  FAN,
  /** One stem with short spurs, slanting or upright. */
  CORDON,
  /** A small cone kept short by pruning in summer. */
  DWARF_PYRAMID
}
