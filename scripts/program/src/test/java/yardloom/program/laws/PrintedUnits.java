package yardloom.program.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;

/**
 * The printed figures of one yard in both systems, each turned into metres, litres and kilograms by
 * the factors below, within half of the last printed digit of both.
 *
 * <p>Source of the factors: NIST Special Publication 811, appendix B.8: inch and pound are exact,
 * the US gallon is 231 cubic inches, a cubic yard 27 cubic feet.
 */
final class PrintedUnits {
  private static final double FOOT = 0.3048;
  private static final double GALLON = 231 * 0.0254 * 0.0254 * 0.0254;
  private static final Map<String, Double> FACTORS =
      Map.ofEntries(
          Map.entry("ft", FOOT),
          Map.entry("inch", FOOT / 12),
          Map.entry("sqft", FOOT * FOOT),
          Map.entry("yd3", 27 * FOOT * FOOT * FOOT),
          Map.entry("gal", GALLON),
          Map.entry("gpm", GALLON * 60),
          Map.entry("gph", GALLON),
          Map.entry("lb", 0.45359237),
          Map.entry("psi", 6.894757),
          Map.entry("m", 1.0),
          Map.entry("cm", 0.01),
          Map.entry("mm", 0.001),
          Map.entry("sqm", 1.0),
          Map.entry("m3", 1.0),
          Map.entry("L", 0.001),
          Map.entry("lph", 0.001),
          Map.entry("kg", 1.0),
          Map.entry("kPa", 1.0),
          Map.entry("h", 1.0),
          Map.entry("days", 1.0),
          Map.entry("percent", 1.0));

  private PrintedUnits() {}

  static List<String> differences(
      Drawn us, Drawn metric, Predicate<String> leftOut, Predicate<String> columnLeftOut) {
    List<String> found = new ArrayList<>();
    int compared = 0;
    for (Table a : us.tables().values()) {
      Table b = metric.tables().get(a.id());
      if (leftOut.test(a.id()) || b == null || b.rows().size() != a.rows().size()) {
        continue;
      }
      for (int i = 0; i < a.columns().size(); i++) {
        String one = us.format().csvHeader(a.columns().get(i));
        String other = metric.format().csvHeader(b.columns().get(i));
        if (!a.columns().get(i).measure().isNumber()
            || columnLeftOut.test(a.columns().get(i).id())) {
          continue;
        }
        for (int row = 0; row < a.rows().size(); row++) {
          double[] x = span(us, one, a.columns().get(i), a.rows().get(row).get(i));
          double[] y = span(metric, other, b.columns().get(i), b.rows().get(row).get(i));
          if (x.length > 0 && y.length > 0) {
            compared++;
            if (Math.abs(x[0] - y[0]) > x[1] + y[1] + 1e-9) {
              found.add(a.id() + " " + one + " row " + row + ": " + x[0] + " and " + y[0]);
            }
          }
        }
      }
    }
    if (compared < 300) {
      found.add("only " + compared + " figures are printed in both");
    }
    return found;
  }

  /** The value and half of its last digit; nothing for money, counts and temperatures. */
  private static double[] span(Drawn drawn, String header, Column column, Cell cell) {
    Double factor = FACTORS.get(header.substring(header.lastIndexOf('_') + 1));
    String text = drawn.format().plain(column, cell);
    if (factor == null || !header.contains("_") || !text.matches("-?[0-9.]+")) {
      return new double[0];
    }
    int point = text.indexOf('.');
    int decimals = point < 0 ? 0 : text.length() - point - 1;
    return new double[] {Double.parseDouble(text) * factor, 0.5 * Math.pow(10, -decimals) * factor};
  }
}
