package yardloom.kernel.problem;

/** The kinds of problems; tests assert these, people read the message. */
public enum ProblemCode {
  /** The text is not a well-formed script or data file. */
  SYNTAX,
  /** A word, option, name or choice that does not exist. */
  UNKNOWN_WORD,
  /** A word that exists, but not in this block. */
  MISPLACED_WORD,
  /** A word that a plugin offers which is not loaded. */
  MISSING_PLUGIN,
  /** A required argument is missing. */
  MISSING_OPTION,
  /** An argument or option is given twice, or two definitions clash. */
  DUPLICATE,
  /** A value of another type or dimension than is needed. */
  WRONG_TYPE,
  /** A value outside the range that makes sense. */
  OUT_OF_RANGE,
  /** A shape that crosses itself, has no area, or cannot be worked with. */
  BAD_SHAPE,
  /** Measurements that contradict each other. */
  CONTRADICTION,
  /** Something the plan language does not allow. */
  FORBIDDEN,
  /** A script used up its steps, memory, time or depth. */
  LIMIT,
  /** A file that cannot be read or written. */
  FILE,
  /** Plugins that cannot work together. */
  PLUGIN_CONFLICT,
  /** A plugin from outside the program that is broken. */
  PLUGIN_FAULT,
  /** Calculators that wait for each other. */
  CYCLE,
  /** A fault of the program itself. */
  INTERNAL
}
