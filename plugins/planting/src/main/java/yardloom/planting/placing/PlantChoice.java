package yardloom.planting.placing;

import java.util.Optional;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.formula.Layout;

/**
 * One {@code plant} line of a bed.
 *
 * @param plant the catalogue name
 * @param spacing distance of neighbours in a row; the catalogue's if absent
 * @param rowSpacing distance of rows; follows from spacing and layout if absent
 * @param share the part of the bed's length, 0 to 1; an equal part of the rest if absent
 * @param stock as what it is bought; as usual for its kind and season if absent
 * @param stands whether the plants stand already and are kept
 */
public record PlantChoice(
    String plant,
    Optional<Length> spacing,
    Optional<Length> rowSpacing,
    Layout layout,
    Optional<Double> share,
    Optional<String> stock,
    boolean stands) {
  /** The same, there already. */
  PlantChoice standing() {
    return new PlantChoice(plant, spacing, rowSpacing, layout, share, stock, true);
  }
}
