package yardloom.site.revision;

import java.time.LocalDate;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for what was changed since the plan was issued. */
public final class RevisionWords {
  /** What the field of the title block holds beside a date. */
  private static final int LONGEST_NAME = 12;

  private static final int LONGEST_TEXT = 160;

  private RevisionWords() {}

  @Verb(
      help =
          "Says what a later issue of the plan changed: a line for each, oldest first. The last one"
              + " stands in the title block, all stand on the cover.",
      example = "revision('A', date: '2026-04-02', what: 'tank moved to the north wall')")
  public static void revision(
      PlanScope plan,
      @Arg(name = "name", help = "its mark, such as A or 2, at most 12 letters") String name,
      @Opt(
              name = "date",
              help = "its day, such as 2026-04-02, not before that of the plan",
              required = true)
          String date,
      @Opt(
              name = "what",
              help = "what was changed, at most 160 letters in one line",
              required = true)
          String what) {
    Making.name("revision", name);
    if (name.length() > LONGEST_NAME) {
      throw outOfRange(
          plan,
          "the name of a revision has 1 to "
              + LONGEST_NAME
              + " letters, got "
              + name.length()
              + "; say the rest with `what:`");
    }
    String changed = Making.line(plan, "what a revision changed", what, LONGEST_TEXT);
    Revision said = new Revision(name, day(plan, date), changed);
    Draft draft = plan.draft();
    for (Attributes.Entry<Revision> earlier : draft.attributes().all(Revision.KEY)) {
      requireLater(plan, said, earlier);
    }
    draft.attributes().add(Revision.KEY, said, plan.place());
    draft.info(
        Revising.newest(draft.attributes().all(Revision.KEY), draft.info(), plan.place()),
        draft.infoPlace());
  }

  private static void requireLater(
      PlanScope plan, Revision said, Attributes.Entry<Revision> earlier) {
    if (earlier.value().name().equals(said.name())) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          plan.place(),
          "revision '"
              + said.name()
              + "' is already given at "
              + earlier.place()
              + "; give each its own name");
    }
    if (said.date().isBefore(earlier.value().date())) {
      throw outOfRange(
          plan,
          "revision '"
              + said.name()
              + "' of "
              + said.date()
              + " stands after '"
              + earlier.value().name()
              + "' of "
              + earlier.value().date()
              + " at "
              + earlier.place()
              + "; write revisions in the order of their dates, the newest last");
    }
  }

  private static LocalDate day(PlanScope plan, String date) {
    return PlanInfo.day(date)
        .orElseThrow(
            () ->
                outOfRange(
                    plan,
                    "'"
                        + date
                        + "' is not a day of the calendar; write year, month and day:"
                        + " '2026-04-02'"));
  }

  private static PlanException outOfRange(PlanScope plan, String text) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, plan.place(), text);
  }
}
