package yardloom.kernel.table;

/**
 * One column of a table.
 *
 * @param id stable name for CSV and JSON, lower case with hyphens
 * @param title the printed heading, without the unit
 */
public record Column(String id, String title, Measure measure) {
  public Column {
    if (!id.matches("[a-z0-9-]+")) {
      throw new IllegalArgumentException("column id \"" + id + "\" is not lower-case-with-hyphens");
    }
  }

  public static Column text(String id, String title) {
    return new Column(id, title, Measure.TEXT);
  }

  public static Column of(String id, String title, Measure measure) {
    return new Column(id, title, measure);
  }
}
