package yardloom.site.survey;

import java.util.Locale;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.survey.Bearings;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.survey.TapeFix;
import yardloom.kernel.survey.Traverse;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;

/** The tables of what was measured. */
public final class SurveyTables {
  private static final Source COMPASS =
      Source.computed(
          "Traverse computations: compass rule",
          "J. Mahun, Open Access Surveying Library",
          0,
          "chapter E");

  private SurveyTables() {}

  public static Table ties(Plan plan) {
    Table.Builder table =
        Table.titled("ties", "Points measured by tape")
            .column(Column.text("point", "point"))
            .column(Column.text("from", "tape from"))
            .column(Column.of("measured", "measured", Measure.LENGTH))
            .column(Column.of("residual", "residual", Measure.DEPTH))
            .column(Column.of("normalised", "residual / its error", Measure.RATIO));
    for (Attributes.Entry<SurveyNotes.Tied> entry : plan.attributes().all(SurveyNotes.TIES)) {
      TapeFix fix = entry.value().fix();
      for (int i = 0; i < fix.tapes().size(); i++) {
        TapeFix.Tape tape = fix.tapes().get(i);
        table.row(
            Cell.text(entry.value().name()),
            Cell.text(tape.name()),
            Cell.of(Derived.given(tape.distance(), "tape from " + tape.name(), entry.place())),
            fix.isChecked() ? Cell.of(fix.residuals().get(i)) : Cell.BLANK,
            fix.normalised().get(i).isPresent()
                ? Cell.number(fix.normalised().get(i).getAsDouble())
                : Cell.text("unchecked"));
      }
      table.note(entry.value().name() + ": " + summary(plan, fix));
    }
    return table.build();
  }

  private static String summary(Plan plan, TapeFix fix) {
    if (!fix.isChecked()) {
      return "two tapes, unchecked.";
    }
    return String.format(
        Locale.ROOT,
        "%d %s more than needed, standard error %s by %s.",
        fix.freedom(),
        fix.freedom() == 1 ? "tape" : "tapes",
        Show.length(plan, fix.errorX().orElse(Length.ZERO)),
        Show.length(plan, fix.errorY().orElse(Length.ZERO)));
  }

  public static Table deeds(Plan plan) {
    Table.Builder table =
        Table.titled("deed", "Deed calls")
            .column(Column.text("call", "call"))
            .column(Column.text("bearing", "plan bearing (of the chord)"))
            .column(Column.of("distance", "distance (chord)", Measure.LENGTH))
            .column(Column.text("curve", "curve"))
            .column(Column.of("latitude", "north", Measure.LENGTH))
            .column(Column.of("departure", "east", Measure.LENGTH))
            .column(Column.of("north-adjusted", "north adjusted", Measure.LENGTH))
            .column(Column.of("east-adjusted", "east adjusted", Measure.LENGTH));
    for (Attributes.Entry<SurveyNotes.Described> entry : plan.attributes().all(SurveyNotes.DEEDS)) {
      Deed deed = entry.value().deed();
      Traverse traverse = deed.traverse();
      for (int i = 0; i < deed.calls().size(); i++) {
        Deed.Call call = deed.calls().get(i);
        Traverse.Step raw = traverse.raw().get(i);
        Traverse.Step fair = traverse.balanced().get(i);
        table.row(
            Cell.text(call.name()),
            Cell.text(Bearings.quadrant(call.chord().azimuth())),
            Cell.of(Derived.given(call.chord().distance(), "call " + call.name(), call.place())),
            Cell.text(call.bend().map(b -> curve(plan, b)).orElse("")),
            Cell.of(raw.latitude()),
            Cell.of(raw.departure()),
            Cell.of(
                balanced(fair.latitude(), raw.latitude(), traverse.sumOfLatitudes(), i, traverse)),
            Cell.of(
                balanced(
                    fair.departure(), raw.departure(), traverse.sumOfDepartures(), i, traverse)));
      }
      table.note(summary(plan, entry.value()));
    }
    return table.build();
  }

  /** A part after the compass rule, which spreads the sum of all such parts, zero if they close. */
  private static Derived<Length> balanced(
      Length value, Length raw, Length sum, int course, Traverse traverse) {
    return Derived.by("part − sum of parts × length / total length", COMPASS)
        .from("part", raw)
        .from("sum of parts", sum)
        .from("length", traverse.courses().get(course).distance())
        .from("total length", traverse.total())
        .gives(value);
  }

  private static String curve(Plan plan, Deed.Bend bend) {
    return "R "
        + Show.length(plan, bend.curve().radius())
        + ", Δ "
        + Bearings.dms(bend.curve().delta())
        + ", arc "
        + Show.length(plan, bend.curve().arc())
        + (bend.left() ? ", left" : ", right");
  }

  private static String summary(Plan plan, SurveyNotes.Described described) {
    Deed deed = described.deed();
    String closes =
        deed.isChecked()
            ? "misclosure "
                + Show.length(plan, deed.traverse().misclosure())
                + (deed.traverse().precision().isPresent()
                    ? String.format(
                        Locale.ROOT, " (1 : %.0f)", deed.traverse().precision().getAsDouble())
                    : "")
            : "unchecked, the last call was worked out";
    return described.name()
        + ": "
        + described.basis()
        + "; "
        + closes
        + "; area "
        + Show.area(plan, deed.rawArea())
        + " as written, "
        + Show.area(plan, deed.adjustedArea())
        + " adjusted. No survey.";
  }
}
