package yardloom.kernel.table;

/** How much a table matters on paper; every table stands in the report and in the files. */
public enum OnPaper {
  /** Nobody can build without it: a further sheet is taken if the sheets are full. */
  ALWAYS,
  /** It fills room on a sheet that is there anyway. */
  IF_ROOM,
  /** It explains or compares, and is read at a desk. */
  REPORT
}
