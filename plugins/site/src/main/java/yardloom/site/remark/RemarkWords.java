package yardloom.site.remark;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Acceptance;
import yardloom.kernel.draw.OwnPanel;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.site.firm.OwnSheet;

/** The words for the drawing's own remarks and for findings that are accepted. */
public final class RemarkWords {
  /** Longer texts belong beside the drawing. */
  private static final int MOST = 160;

  private static final int MOST_BESIDE = 600;
  private static final String HEADING = "Notes";

  private RemarkWords() {}

  @Verb(
      help =
          "Writes a note: at a point of the site plan, or beside it under \"Notes\" on the sheet"
              + " that is named.",
      example = "note('old well, filled', at: point(12.ft, 30.ft))")
  public static void note(
      PlanScope plan,
      @Arg(name = "text", help = "what it says, at most 160 letters, beside the plan 600")
          String text,
      @Opt(name = "at", help = "what it points to", fallback = "nothing: it stands beside the plan")
          Point at,
      @Opt(
              name = "sheet",
              help = "the sheet of a note without a point; the first drawing if it is not drawn",
              fallback = "layout",
              choices = OwnSheet.class)
          String sheet) {
    if (at == null) {
      String id = Choices.parse(OwnSheet.class, sheet, OwnSheet.LAYOUT).id();
      String said = Making.text(plan, "a note", text, MOST_BESIDE);
      Panel notes = new Panel.Notes(HEADING, List.of(said));
      plan.draft().attributes().add(OwnPanel.KEY, new OwnPanel(id, notes), plan.place());
      return;
    }
    if (sheet != null) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a note at a point stands on the site plan; leave out `sheet:`, or `at:`");
    }
    String said = Making.text(plan, "a note", text, MOST);
    plan.draft().attributes().add(Remark.NOTE, new Remark.Note(said, at), plan.place());
  }

  @Verb(
      help = "Draws a dimension between two points, with its length.",
      example = "dimension(point(12.ft, 30.ft), point(18.ft, 30.ft), offset: 2.ft)")
  public static void dimension(
      PlanScope plan,
      @Arg(name = "from", help = "first end") Point from,
      @Arg(name = "to", help = "other end") Point to,
      @Opt(
              name = "offset",
              help = "from the points to the dimension line, left of the way if positive",
              fallback = "0 ft")
          Length offset,
      @Opt(name = "text", help = "goes before the length", fallback = "none") String text) {
    if (from.distance(to).metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          plan.place(),
          "a dimension needs two points apart from each other");
    }
    String before = text == null ? "" : Making.text(plan, "the text of a dimension", text, MOST);
    plan.draft()
        .attributes()
        .add(
            Remark.MEASURED,
            new Remark.Measured(from, to, offset == null ? Length.ZERO : offset, before),
            plan.place());
  }

  @Verb(
      help = "Leaves a label off the drawings: of one element by its name, or of a kind.",
      example = "hideLabel('path')")
  public static void hideLabel(
      PlanScope plan,
      @Arg(name = "of", help = "an element's name, or a kind such as 'path'") String of) {
    plan.draft().attributes().add(Remark.HIDDEN, of, plan.place());
  }

  @Verb(
      help =
          "Accepts what a rule finds; it is still printed, as accepted and with the reason. What"
              + " must be changed cannot be accepted.",
      example = "accept('site.bed-reach', why: 'the household steps on boards', of: 'Herbs')")
  public static void accept(
      PlanScope plan,
      @Arg(name = "rule", help = "the rule, as the list of findings has it in brackets")
          String rule,
      @Opt(name = "why", help = "the reason, printed with the finding", required = true) String why,
      @Opt(name = "of", help = "only for the element of this name", fallback = "all it finds")
          String of) {
    String reason = Making.text(plan, "a reason", why, MOST);
    plan.draft()
        .attributes()
        .add(Acceptance.KEY, new Acceptance(rule, Optional.ofNullable(of), reason), plan.place());
  }
}
