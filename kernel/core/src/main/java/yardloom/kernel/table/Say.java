package yardloom.kernel.table;

import java.util.Locale;
import java.util.regex.Pattern;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** Quantities in words for messages and notes, where no table column formats them. */
public final class Say {
  private static final Pattern IN_TEXT = Pattern.compile("\\{([0-9.]+) (in|lb)}");

  private Say() {}

  /** A quantity as columns of a measure show it, in one system. */
  public static String of(Measure measure, Quantity<?> quantity, UnitSystem units) {
    return new TableFormat(units, "").inText(measure, quantity);
  }

  /** The same in both systems, the plan's own first: {@code 257 gal (973 L)}. */
  public static String both(Measure measure, Quantity<?> quantity, UnitSystem units) {
    return units.both(
        of(measure, quantity, UnitSystem.US), of(measure, quantity, UnitSystem.METRIC));
  }

  /** The same where no plan is at hand, as limits in refusals are said: US first. */
  public static String both(Measure measure, Quantity<?> quantity) {
    return both(measure, quantity, UnitSystem.US);
  }

  /** A length of any size in both systems: in inches and centimetres below half a metre. */
  public static String size(Length length) {
    return both(Math.abs(length.metres()) < 0.5 ? Measure.DEPTH : Measure.FINE_LENGTH, length);
  }

  /** A small length in both systems: {@code 6 in (15.2 cm)}. */
  public static String depth(Length length) {
    return depthFor(length, UnitSystem.US);
  }

  /** The same with the plan's system first: {@code 15.2 cm (6 in)} in a metric plan. */
  public static String depthFor(Length length, UnitSystem units) {
    return units.both(number(length.inches()) + " in", number(length.metres() * 100) + " cm");
  }

  /** A small length in one system. */
  public static String depth(Length length, UnitSystem units) {
    return number(length.in(units.depthUnit())) + " " + units.depthUnit().symbol();
  }

  /**
   * How deep a loose layer is laid, as a crew can rake it: in whole centimetres from ten on, in
   * halves below, so that four inches are 10 cm; inches as {@link #depth}.
   */
  public static String laid(Length length, UnitSystem units) {
    if (units == UnitSystem.US) {
      return depth(length, units);
    }
    double cm = length.metres() * 100;
    return number(cm < 10 ? Math.round(cm * 2) / 2.0 : Math.round(cm)) + " cm";
  }

  /** Text in which {@code {4 in}} stands for a small length, {@code {50 lb}} for a load to lift. */
  public static String inText(String text, UnitSystem units) {
    return IN_TEXT
        .matcher(text)
        .replaceAll(
            m -> {
              double said = Double.parseDouble(m.group(1));
              if (units == UnitSystem.US) {
                return number(said) + " " + m.group(2);
              }
              return m.group(2).equals("lb")
                  ? Math.round(Mass.pounds(said).kilograms()) + " kg"
                  : Math.round(said * 2.54 / 5) * 5 + " cm";
            });
  }

  /** A piece to be sawn: inches to the sixteenth, or whole millimetres. */
  public static String fine(Length length, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return Math.round(length.millimetres()) + " mm";
    }
    long sixteenths = Math.round(length.inches() * 16);
    long whole = sixteenths / 16;
    long part = sixteenths % 16;
    if (part == 0) {
      return whole + " in";
    }
    int bottom = 16;
    while (part % 2 == 0) {
      part /= 2;
      bottom /= 2;
    }
    return (whole == 0 ? "" : whole + " ") + part + "/" + bottom + " in";
  }

  /** A depth of water, of which a hundredth of an inch counts. */
  public static String fineDepth(Length length, UnitSystem units) {
    return units == UnitSystem.METRIC
        ? number(length.millimetres()) + " mm"
        : String.format(Locale.ROOT, "%.2f in", length.inches());
  }

  /** A distance in one system. */
  public static String distance(Length length, UnitSystem units) {
    return units == UnitSystem.US ? number(length.feet()) + " ft" : number(length.metres()) + " m";
  }

  /** A bulk volume in one system. */
  public static String volume(Volume volume, UnitSystem units) {
    return units == UnitSystem.US
        ? number(volume.cubicYards()) + " cu yd"
        : number(volume.cubicMetres()) + " m³";
  }

  /** A share as a whole percentage. */
  public static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", share * 100);
  }

  /** One decimal, none when it would be zero. */
  public static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** The mark of the newest revision and its day, such as {@code B, 2 Apr 2026}; empty if none. */
  public static String revision(PlanInfo info) {
    return info.revision() + info.revised().map(on -> ", " + TableFormat.date(on)).orElse("");
  }
}
