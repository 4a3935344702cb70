package yardloom.kernel.table;

/**
 * What a sheet is about, so that a table of any plugin can offer itself without naming the sheet.
 */
public enum SheetTopic {
  /** Sun, shade and the seasons of the yard. */
  SUN_AND_SEASONS
}
