package yardloom.program.output;

/** The kinds of files that {@code draw} can write; {@code findings.txt} is always written. */
public enum OutputKind {
  /** Sheets as drawings. */
  SVG,
  /** Sheets as pictures. */
  PNG,
  /** Sheets for print. */
  PDF,
  /** Everything on one page for a browser. */
  HTML,
  /** Tables. */
  CSV,
  /** All tables as one workbook. */
  XLSX,
  /** Results for other programs. */
  JSON,
  /** The layers of the drawing for maps, a file each. */
  GEOJSON,
  /** What is to be done on which days, for calendar programs. */
  ICS;

  /** Whether files of this kind show sheets. */
  boolean hasSheets() {
    return this == SVG || this == PNG || this == PDF || this == HTML;
  }
}
