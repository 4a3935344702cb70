package yardloom.work.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.work.labour.OwnItem;

/**
 * Says what is drawn as new and stands neither on the bill nor among the tasks, so that nobody
 * takes it for free; and which items are for an element that is not there.
 *
 * <p>Beds, paths and mulched ground are counted by their area, taps and roofs are there, what is
 * dug has no height and is earthwork.
 */
public final class UncountedCheck implements Check {
  private static final Set<ElementKind> BUILT =
      Set.of(ElementKind.STRUCTURE, ElementKind.FENCE, ElementKind.PAVING, ElementKind.TREE);

  private static final Source RULE =
      Source.commonPractice("what is drawn as new is bought, worked and phased, or said not to be");

  @Override
  public String id() {
    return "work.uncounted";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL, YardFacts.JOBS, YardFacts.SURFACES, YardFacts.STANDS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (Element element : plan.elements()) {
      if (isNew(element) && ElementTable.Counted.of(element.id(), plan, facts).isEmpty()) {
        findings.add(uncounted(element));
      }
    }
    findings.addAll(forNothing(plan));
    return findings;
  }

  private static boolean isNew(Element element) {
    boolean dug = element instanceof Element.Structure s && s.height().metres() == 0;
    return BUILT.contains(element.id().kind()) && !element.stands() && !dug;
  }

  private Finding uncounted(Element element) {
    String advice =
        element instanceof Element.Tree
            ? "name its `species`, or write `standing: true` if it is there"
            : "count it with `item 'what it is', of: 'its name', price: …, hours: …, phase: …`, or"
                + " write `standing: true` if it is there";
    return Finding.of(
            id(),
            Severity.WARNING,
            "is drawn as new, and nothing is bought or done for it: it is neither in the cost nor"
                + " in the hours",
            advice,
            RULE)
        .about(element.id(), element.place());
  }

  private List<Finding> forNothing(Plan plan) {
    Set<String> names = new TreeSet<>();
    plan.elements().forEach(e -> names.add(e.id().name()));
    List<Finding> findings = new ArrayList<>();
    for (var entry : plan.attributes().all(OwnItem.KEY)) {
      OwnItem item = entry.value();
      if (item.element().isPresent() && item.of(plan).isEmpty()) {
        findings.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    "'"
                        + item.name()
                        + "' is for '"
                        + item.element().get()
                        + "', and nothing on the plan is called so."
                        + Nearest.hint(item.element().get(), names),
                    "write the name as the plan does",
                    RULE)
                .at(entry.place()));
      }
    }
    return findings;
  }
}
