package yardloom.site.element;

import java.util.Locale;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Quantities in the plan's units, for the texts of findings. */
public final class Show {
  private Show() {}

  public static String length(Plan plan, Length value) {
    return isUs(plan)
        ? String.format(Locale.ROOT, "%.2f ft", value.feet())
        : String.format(Locale.ROOT, "%.2f m", value.metres());
  }

  public static String small(Plan plan, Length value) {
    return isUs(plan)
        ? String.format(Locale.ROOT, "%.0f in", value.inches())
        : String.format(Locale.ROOT, "%.0f cm", value.metres() * 100);
  }

  public static String area(Plan plan, Area value) {
    return isUs(plan)
        ? String.format(Locale.ROOT, "%.1f sq ft", value.squareFeet())
        : String.format(Locale.ROOT, "%.2f m²", value.squareMetres());
  }

  /** The element's name as a title; a bare number or letter gets its kind before it. */
  public static String name(Element element) {
    return element.id().title();
  }

  /** The text with its first letter as a title has it; not for empty text. */
  public static String capital(String text) {
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toTitleCase(first))
        .append(text.substring(Character.charCount(first)))
        .toString();
  }

  private static boolean isUs(Plan plan) {
    return plan.info().units() == UnitSystem.US;
  }
}
