package yardloom.site.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.survey.CurveGiven;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.survey.TapeFix;
import yardloom.site.element.Show;
import yardloom.site.element.Sources;

/** Rules about measurements: whether they check each other, and how well. */
public final class SurveyRules {
  private static final double LEAST_PRECISION = 5_000;

  private static final Source CLOSURE =
      Source.memory(
          "Precision of 1 : 5,000 for a residential lot", "state survey standards", 0, "");

  private static final Source RESIDUALS =
      Source.commonPractice(
          "a residual of more than three times its expected error is measured again");

  private SurveyRules() {}

  public static List<Finding> ties(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<SurveyNotes.Tied> entry : plan.attributes().all(SurveyNotes.TIES)) {
      tie(plan, entry.value(), entry.place()).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> tie(Plan plan, SurveyNotes.Tied tied, SourceRef place) {
    TapeFix fix = tied.fix();
    if (!fix.isChecked()) {
      return Optional.of(
          at(
              place,
              "site.tie-unchecked",
              Severity.NOTE,
              "the point '" + tied.name() + "' rests on two tapes; nothing checks them",
              "pull a third tape, from the side",
              RESIDUALS));
    }
    if (fix.worst() <= TapeFix.SUSPECT) {
      return Optional.empty();
    }
    String which =
        fix.suspect()
            .map(
                t ->
                    "the tape from "
                        + t.name()
                        + " ("
                        + Show.length(plan, t.distance())
                        + ") is the likeliest to be wrong")
            .orElse("with one tape to spare nobody can tell which is wrong");
    return Optional.of(
        at(
            place,
            "site.tie-residual",
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "the tapes to '%s' disagree by %.1f times their expected error; %s",
                tied.name(),
                fix.worst(),
                which),
            "measure it again; leave out a tape only when you know why it is wrong",
            RESIDUALS));
  }

  public static List<Finding> deeds(Plan plan) {
    List<Finding> findings = new ArrayList<>();
    for (Attributes.Entry<SurveyNotes.Described> entry : plan.attributes().all(SurveyNotes.DEEDS)) {
      Deed deed = entry.value().deed();
      closure(plan, deed, entry.place()).ifPresent(findings::add);
      for (Deed.Call call : deed.calls()) {
        for (CurveGiven.Discrepancy d :
            call.bend().map(Deed.Bend::discrepancies).orElse(List.of())) {
          findings.add(
              at(
                  call.place(),
                  "site.deed-curve",
                  Severity.WARNING,
                  "the curve '" + call.name() + "' contradicts itself: " + d,
                  "compare with the recorded plat; the first two elements given were used",
                  Sources.PLAN));
        }
      }
    }
    return findings;
  }

  private static Optional<Finding> closure(Plan plan, Deed deed, SourceRef place) {
    if (!deed.isChecked()) {
      return Optional.of(
          at(
              place,
              "site.deed-unchecked",
              Severity.NOTE,
              "the last call was worked out, so the description does not check itself",
              "find the recorded closing call",
              CLOSURE));
    }
    double precision = deed.traverse().precision().orElse(Double.POSITIVE_INFINITY);
    if (precision >= LEAST_PRECISION) {
      return Optional.empty();
    }
    return Optional.of(
        at(
            place,
            "site.deed-misclosure",
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "the description fails to close by %s, 1 : %.0f; area %s as written, %s adjusted",
                Show.length(plan, deed.traverse().misclosure()),
                precision,
                Show.area(plan, deed.rawArea()),
                Show.area(plan, deed.adjustedArea())),
            "look for a swapped digit or a lost call before trusting the adjusted corners",
            CLOSURE));
  }

  private static Finding at(
      SourceRef place, String rule, Severity severity, String text, String advice, Source source) {
    return Finding.of(rule, severity, text, advice, source).at(place);
  }
}
