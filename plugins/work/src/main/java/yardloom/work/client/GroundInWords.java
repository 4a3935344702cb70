package yardloom.work.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.facts.ground.OpenGround;
import yardloom.facts.mulch.MulchTotals;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** Says in a sentence what is laid on how much ground; what the plan leaves out is not named. */
final class GroundInWords {
  private GroundInWords() {}

  static String text(Plan plan, MulchTotals totals) {
    UnitSystem units = plan.info().units();
    List<String> names = new ArrayList<>();
    List<String> amounts = new ArrayList<>();
    if (OpenGround.hasCardboard(plan)) {
      names.add("cardboard");
    }
    if (isLaid(totals.compost().value())) {
      names.add("compost");
    }
    if (isLaid(totals.chips().value())) {
      names.add("wood chips");
      amounts.add(Say.volume(totals.chips().value(), units) + " of chips");
    }
    if (isLaid(totals.compost().value())) {
      amounts.add(Say.volume(totals.compost().value(), units) + " of compost");
    }
    String first = names.isEmpty() ? "mulch" : and(names);
    String ground = TableFormat.of(plan.info()).withUnit(Measure.AREA, totals.ground().value());
    return first.substring(0, 1).toUpperCase(Locale.ROOT)
        + first.substring(1)
        + " over "
        + ground
        + " of ground"
        + (amounts.isEmpty() ? "." : ": " + and(amounts) + " in place.");
  }

  static boolean isLaid(Volume volume) {
    return volume.si() > 0;
  }

  private static String and(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
