package yardloom.sun.neighbour;

import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Standing;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word that says what is new. */
public final class ProposedWords {
  /** Elements that are not there yet and may take a neighbour's sun. */
  public static final AttributeKey<ElementId> PROPOSED =
      new AttributeKey<>("sun.proposed", ElementId.class);

  private ProposedWords() {}

  @Verb(
      help = "Says that an element is new and asks what sun it takes from beds and neighbours.",
      example = "proposed shed")
  public static void proposed(
      PlanScope in,
      @Arg(name = "element", help = "what a word that made it returned") Handle made) {
    in.draft().element(made.id()).ifPresent(element -> isNew(in, element));
    in.draft().attributes().add(PROPOSED, made.id(), in.place());
  }

  private static void isNew(PlanScope in, ElementDraft element) {
    if (element.attributes().all(Standing.KEY).stream().anyMatch(e -> e.value())) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          element.id()
              + " is proposed, but it stands already as "
              + element.place()
              + " says; leave out one of the two");
    }
    element.attributes().add(Standing.KEY, false, in.place());
  }

  /** All elements that the plan calls new, in order. */
  public static SortedSet<ElementId> proposed(Plan plan) {
    SortedSet<ElementId> proposed = new TreeSet<>();
    plan.attributes().all(PROPOSED).forEach(e -> proposed.add(e.value()));
    return proposed;
  }
}
