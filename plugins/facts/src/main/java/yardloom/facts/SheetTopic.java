package yardloom.facts;

import yardloom.kernel.table.SheetUse;

/** What a sheet is about, so that a table of any plugin can offer itself without naming it. */
public enum SheetTopic implements SheetUse {
  /** Sun, shade and the seasons of the yard. */
  SUN_AND_SEASONS
}
