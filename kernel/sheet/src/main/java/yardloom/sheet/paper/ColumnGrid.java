package yardloom.sheet.paper;

/**
 * The columns of a sheet: equal widths, so that blocks line up from sheet to sheet.
 *
 * @param content the frame without the inner margin
 */
public record ColumnGrid(Box frame, Box content, int columns, double columnMm) {
  public static final double GUTTER_MM = 7;
  public static final double GAP_MM = 7;
  private static final double INNER_MARGIN_MM = 4;

  public static ColumnGrid of(Paper paper) {
    Box frame = paper.frame();
    Box content = frame.inset(INNER_MARGIN_MM);
    double width = content.width();
    double least = width < 300 ? 80 : width < 500 ? 88 : width < 700 ? 100 : 108;
    int columns = (int) Math.max(1, Math.floor((width + GUTTER_MM) / (least + GUTTER_MM)));
    return new ColumnGrid(frame, content, columns, (width - (columns - 1) * GUTTER_MM) / columns);
  }

  /** The same grid on a sheet whose title runs along the foot over all columns. */
  public ColumnGrid aboveStrip(double stripMm) {
    double height = frame.bottom() - stripMm - INNER_MARGIN_MM - content.y();
    return new ColumnGrid(
        frame, new Box(content.x(), content.y(), content.width(), height), columns, columnMm);
  }

  public double left(int column) {
    return content.x() + column * (columnMm + GUTTER_MM);
  }

  /** The width of {@code count} columns side by side. */
  public double span(int count) {
    return count * columnMm + (count - 1) * GUTTER_MM;
  }

  /** How many columns a block of this width takes. */
  public int columnsFor(double widthMm) {
    int needed = 1;
    while (needed < columns && span(needed) < widthMm - 1e-9) {
      needed++;
    }
    return needed;
  }

  /** Whether the title runs along the foot, so that all columns end above it. */
  public boolean isAboveStrip() {
    return content.bottom() < frame.bottom() - INNER_MARGIN_MM - 1e-9;
  }

  /** The width of the title block, which reaches into the margins of the last column. */
  public double titleBlockMm() {
    if (isAboveStrip()) {
      return frame.width();
    }
    return columnMm + INNER_MARGIN_MM + GUTTER_MM / 2;
  }
}
