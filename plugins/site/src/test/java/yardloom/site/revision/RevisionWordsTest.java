package yardloom.site.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.site.outline.PlanWords;

/** What the word for revisions refuses, and what it puts into the title block. */
class RevisionWordsTest {
  private final PlanKit kit = PlanKit.us();

  private void plan(String date, String revision) {
    PlanWords.plan(kit.words(), "Yard", null, null, date, revision, null, null);
  }

  private void revision(String name, String date) {
    RevisionWords.revision(kit.words(), name, date, "moved " + name);
  }

  private void refused(ProblemCode code, String text, Runnable what) {
    PlanException e = assertThrows(PlanException.class, what::run);
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(text), e.getMessage());
  }

  private PlanInfo info() {
    return kit.draft.info();
  }

  @Test
  void newest_isTheLast_whicheverLineComesFirst() {
    revision("1", "2026-04-02");
    plan("2026-03-01", null);
    assertEquals("1", info().revision());
    revision("2", "2026-06-30");
    assertEquals("2", info().revision());
    assertEquals(Optional.of(LocalDate.of(2026, 6, 30)), info().revised());
    assertEquals("Yard", info().title());
    assertEquals("2026-03-01", info().date());
  }

  /** A revision on the day of issue, and two on one day, are as late as they have to be. */
  @Test
  void sameDay_isNotBefore() {
    plan("2026-04-02", null);
    revision("A", "2026-04-02");
    revision("B", "2026-04-02");
    assertEquals("B", info().revision());
  }

  @Test
  void nameTwice_isRefused() {
    revision("A", "2026-04-02");
    refused(
        ProblemCode.DUPLICATE,
        "revision 'A' is already given at test.groovy:1:1",
        () -> revision("A", "2026-05-03"));
  }

  @Test
  void outOfOrder_isRefused() {
    revision("A", "2026-04-02");
    refused(
        ProblemCode.OUT_OF_RANGE,
        "'B' of 2026-04-01 stands after 'A' of 2026-04-02 at test.groovy:1:1",
        () -> revision("B", "2026-04-01"));
  }

  @Test
  void beforeThePlan_isRefused_whicheverLineComesFirst() {
    revision("A", "2026-04-02");
    refused(
        ProblemCode.OUT_OF_RANGE,
        "dated 2026-04-02, before the plan, which was issued on 2026-04-03",
        () -> plan("2026-04-03", null));
    PlanKit other = PlanKit.us();
    PlanWords.plan(other.words(), "Yard", null, null, "2026-04-03", null, null, null);
    refused(
        ProblemCode.OUT_OF_RANGE,
        "which was issued on 2026-04-03",
        () -> RevisionWords.revision(other.words(), "A", "2026-04-02", "x"));
  }

  /** What is no date of ISO 8601 is printed as it is, and nothing is before it. */
  @Test
  void planOfASeason_isComparedWithNothing() {
    plan("spring 2026", null);
    revision("A", "2020-01-01");
    assertEquals("A", info().revision());
  }

  @Test
  void markInThePlanToo_isRefused() {
    plan(null, "C");
    refused(ProblemCode.DUPLICATE, "`plan` says revision: 'C'", () -> revision("D", "2026-04-02"));
  }

  @Test
  void namesDatesAndTexts_haveTheirForm() {
    refused(
        ProblemCode.OUT_OF_RANGE, "1 to 12 letters", () -> revision("n".repeat(13), "2026-04-02"));
    refused(ProblemCode.OUT_OF_RANGE, "letters", () -> revision(" ", "2026-04-02"));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "'2026-02-29' is not a day of the calendar",
        () -> revision("A", "2026-02-29"));
    refused(ProblemCode.OUT_OF_RANGE, "'2 April'", () -> revision("A", "2 April"));
    for (String text : List.of(" ", "w".repeat(161), "two\nlines", "\u202eturned")) {
      refused(
          ProblemCode.OUT_OF_RANGE,
          "",
          () -> RevisionWords.revision(kit.words(), "A", "2026-04-02", text));
    }
    refused(
        ProblemCode.OUT_OF_RANGE,
        "what a revision changed must be one line of plain text",
        () -> RevisionWords.revision(kit.words(), "A", "2026-04-02", "two\nlines"));
    revision("n".repeat(12), "2028-02-29");
  }

  /**
   * Whatever the days: in order they are all kept and the latest is shown, else they are refused.
   */
  @Property(tries = 200)
  void daysInOrder_areKept_othersRefused(
      @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 0, max = 900) Integer> days) {
    PlanKit fresh = PlanKit.us();
    LocalDate issue = LocalDate.of(2026, 1, 1);
    boolean ordered = days.stream().sorted(Comparator.naturalOrder()).toList().equals(days);
    Runnable all =
        () -> {
          for (int i = 0; i < days.size(); i++) {
            RevisionWords.revision(
                fresh.words(), "R" + i, issue.plusDays(days.get(i)).toString(), "change " + i);
          }
        };
    if (!ordered) {
      assertThrows(PlanException.class, all::run);
      return;
    }
    all.run();
    assertEquals(days.size(), fresh.draft.attributes().all(Revision.KEY).size());
    assertEquals(
        Optional.of(issue.plusDays(days.stream().max(Comparator.naturalOrder()).orElseThrow())),
        fresh.draft.info().revised());
  }
}
