package yardloom.sun.hours;

/**
 * Square cells over the plan; rows run up the plan.
 *
 * @param cornerXM left edge of the first column
 * @param cornerYM lower edge of the first row
 */
public record CellGrid(double cornerXM, double cornerYM, double cellM, int columns, int rows) {
  public CellGrid {
    if (!(cellM > 0) || columns < 1 || rows < 1) {
      throw new IllegalArgumentException(
          "a grid needs cells, got " + columns + " by " + rows + " of " + cellM + " m");
    }
  }

  public int cells() {
    return columns * rows;
  }

  public double xM(int column) {
    return cornerXM + (column + 0.5) * cellM;
  }

  public double yM(int row) {
    return cornerYM + (row + 0.5) * cellM;
  }
}
