package yardloom.kernel.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Acceptance;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.unit.UnitSystem;

/** What a plan accepts of findings, from the statement to the list. */
class AcceptingTest {
  private static final Source BOOK = Source.commonPractice("a yard has a way to each bed");

  private static ElementId bed(String name) {
    return new ElementId(ElementKind.BED, name);
  }

  private static Finding finding(String rule, Severity severity, String about) {
    return Finding.of(rule, severity, "the " + about + " is far", "move it", BOOK)
        .about(bed(about), at(12));
  }

  private static SourceRef at(int line) {
    return new SourceRef("yard.groovy", line, 1);
  }

  private static List<Finding> found(List<Finding> findings, Acceptance... accepted) {
    Draft draft = new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.US, "$"));
    int line = 40;
    for (Acceptance one : accepted) {
      draft.attributes().add(Acceptance.KEY, one, at(line++));
    }
    TestPlugin plugin =
        TestPlugin.checking(
            TestPlugin.check("test.reach", plan -> findings),
            TestPlugin.check("test.slope", plan -> List.of()));
    Study study = new Study(PluginLoader.of(List.of(plugin)));
    List<Finding> checked = study.check(draft.freeze());
    assertEquals(checked, study.of(draft.freeze()).findings(), "with and without tables");
    return checked;
  }

  private static Acceptance accept(String rule, String element, String why) {
    return new Acceptance(rule, Optional.ofNullable(element), why);
  }

  private static List<String> shown(List<Finding> findings) {
    return findings.stream()
        .map(f -> f.severity() + " " + f.rule() + " " + f.text() + " | " + f.advice())
        .toList();
  }

  @Test
  void acceptedFinding_ofOneBed_leavesTheOtherAsItWas() {
    assertEquals(
        List.of(
            "WARNING test.reach the herbs is far | move it",
            "ACCEPTED test.reach the kale is far | accepted: we walk gladly"),
        shown(
            found(
                List.of(
                    finding("test.reach", Severity.WARNING, "kale"),
                    finding("test.reach", Severity.WARNING, "herbs")),
                accept("test.reach", "kale", "we walk gladly"))));
  }

  @Test
  void acceptedRule_withoutAnElement_coversAll_andKindWithNameIsTheSameElement() {
    List<Finding> two =
        List.of(
            finding("test.reach", Severity.WARNING, "kale"),
            finding("test.reach", Severity.NOTE, "herbs"));
    assertTrue(
        found(two, accept("test.reach", null, "small yard")).stream()
            .allMatch(f -> f.severity() == Severity.ACCEPTED && f.place().line() == 12));
    assertEquals(
        1,
        found(two, accept("test.reach", "bed \"kale\"", "small yard")).stream()
            .filter(f -> f.severity() == Severity.ACCEPTED)
            .count());
  }

  @Test
  void error_isNotAccepted_andThatIsSaid() {
    List<Finding> all =
        found(
            List.of(finding("test.reach", Severity.ERROR, "kale")),
            accept("test.reach", null, "no matter"));
    assertEquals(
        List.of(
            "ERROR test.reach the kale is far | move it",
            "WARNING kernel.accept 'test.reach' is an error here and cannot be accepted"
                + " | change what it says"),
        shown(all));
    assertEquals(at(40), all.get(1).place());
  }

  @Test
  void acceptanceForNothing_isToldAsNote_andOfAnUnknownRuleAsWarning() {
    assertEquals(
        List.of(
            "WARNING kernel.accept no rule is called 'test.slop'. Did you mean `test.slope`?"
                + " | write the rule as the list of findings does",
            "WARNING kernel.accept no rule is called 'too.steep.slopes'. There is test.slope"
                + " | write the rule as the list of findings does",
            "WARNING kernel.accept no rule is called 'zebra'."
                + " | write the rule as the list of findings does",
            "NOTE kernel.accept nothing is found by 'test.slope' about kale: nothing is accepted"
                + " | write the rule as the list of findings does",
            "NOTE kernel.accept nothing is found by 'test.slope': nothing is accepted"
                + " | write the rule as the list of findings does"),
        shown(
            found(
                List.of(),
                accept("test.slope", "kale", "it drains"),
                accept("test.slope", null, "it drains"),
                accept("test.slop", null, "a slip of the pen"),
                accept("too.steep.slopes", null, "other words"),
                accept("zebra", null, "nothing like it"))));
  }

  @Test
  void acceptance_ofAnotherRuleOrElement_doesNotCover() {
    Finding kale = finding("test.reach", Severity.WARNING, "kale");
    assertFalse(accept("test.slope", null, "x").covers(kale));
    assertFalse(accept("test.reach", "herbs", "x").covers(kale));
    assertFalse(
        accept("test.reach", "kale", "x").covers(finding("test.reach", Severity.ERROR, "kale")));
    Finding ofThePlan = Finding.of("test.reach", Severity.NOTE, "no way", "", BOOK);
    assertFalse(accept("test.reach", "kale", "x").covers(ofThePlan), "it is about no element");
    assertTrue(accept("test.reach", null, "x").covers(ofThePlan));
  }
}
