package yardloom.site.element;

import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/** Quantities in the plan's units, for the texts of findings. */
public final class Show {
  private Show() {}

  public static String length(Plan plan, Length value) {
    return Say.of(Measure.FINE_LENGTH, value, plan.info().units());
  }

  public static String small(Plan plan, Length value) {
    return Say.of(Measure.WIDTH, value, plan.info().units());
  }

  public static String area(Plan plan, Area value) {
    return Say.of(Measure.FINE_AREA, value, plan.info().units());
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
}
