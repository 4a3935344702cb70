package yardloom.sun.neighbour;

import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
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
      help = "Says that an element is new, so that its shade on neighbours is looked at.",
      example = "proposed shed")
  public static void proposed(
      PlanScope in,
      @Arg(name = "element", help = "what a word that made it returned") Handle made) {
    in.draft().attributes().add(PROPOSED, made.id(), in.place());
  }

  /** All elements that the plan calls new, in order. */
  public static SortedSet<ElementId> proposed(Plan plan) {
    SortedSet<ElementId> proposed = new TreeSet<>();
    plan.attributes().all(PROPOSED).forEach(e -> proposed.add(e.value()));
    return proposed;
  }
}
