package yardloom.program.editor;

/**
 * What may be written at a place.
 *
 * @param label how lists show it
 * @param insert what is written
 * @param detail a few words beside the label
 * @param help what it does, in Markdown
 */
public record Suggestion(Kind kind, String label, String insert, String detail, String help) {
  /** What it is. */
  public enum Kind {
    WORD,
    OPTION,
    CHOICE,
    ROW,
    UNIT,
    NAME
  }
}
