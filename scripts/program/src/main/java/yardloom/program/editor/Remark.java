package yardloom.program.editor;

/**
 * Something to mark in a script.
 *
 * @param line from 1; 0 where the whole script is meant
 * @param column from 1; 0 where the whole line is meant
 */
public record Remark(Weight weight, int line, int column, String text, String code) {
  /** How much it matters. */
  public enum Weight {
    ERROR,
    WARNING,
    NOTE
  }
}
