package yardloom.kernel.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * A plan while its script runs. Not thread-safe; thrown away after {@link #freeze()}.
 *
 * <p>Every change names the script place it comes from, so that a clash can point at both.
 */
public final class Draft {
  /** Enough for any yard; a guard against scripts that loop. */
  public static final int MAX_ELEMENTS = 20_000;

  private final Map<ElementId, ElementDraft> elements = new TreeMap<>();
  private final Map<String, String> parameters = new TreeMap<>();
  private final Attributes.Builder attributes = new Attributes.Builder();
  private PlanInfo info;
  private SourceRef infoPlace = SourceRef.NONE;
  private Site site;
  private Lot lot;
  private final Set<String> done = new TreeSet<>();
  private String part = "";

  public Draft(PlanInfo info) {
    this.info = info;
  }

  public PlanInfo info() {
    return info;
  }

  public void info(PlanInfo newInfo, SourceRef place) {
    info = newInfo;
    infoPlace = place;
  }

  public SourceRef infoPlace() {
    return infoPlace;
  }

  public void site(Site newSite, SourceRef place) {
    if (site != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE, place, "the site is already given; a plan has one site");
    }
    site = newSite;
  }

  public Optional<Site> site() {
    return Optional.ofNullable(site);
  }

  public void lot(Lot newLot) {
    if (lot != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          newLot.place(),
          "the lot is already given at " + lot.place() + "; a plan has one lot");
    }
    lot = newLot;
  }

  /** Replaces the lot by one with the same outline and other sides. */
  public void relot(Lot newLot) {
    lot = newLot;
  }

  public Optional<Lot> lot() {
    return Optional.ofNullable(lot);
  }

  /** Adds an element; {@code finish} makes it when the draft is frozen. */
  public ElementDraft add(
      ElementId id, SourceRef place, Function<Element.Common, ? extends Element> finish) {
    ElementDraft earlier = elements.get(id);
    if (earlier != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          place,
          id + " is already given at " + earlier.place() + "; give each its own name");
    }
    if (elements.size() >= MAX_ELEMENTS) {
      throw new PlanException(
          ProblemCode.LIMIT, place, "a plan holds at most " + MAX_ELEMENTS + " elements");
    }
    ElementDraft draft = new ElementDraft(id, place, finish);
    if (!part.isEmpty()) {
      draft.attributes().add(PartTurn.PART, part, place);
      if (done.contains(part)) {
        draft.attributes().add(PartTurn.KEY, PartTurn.DONE, place);
      }
    }
    elements.put(id, draft);
    return draft;
  }

  /** An element that was added before. */
  public Optional<ElementDraft> element(ElementId id) {
    return Optional.ofNullable(elements.get(id));
  }

  public Attributes.Builder attributes() {
    return attributes;
  }

  /**
   * Lets {@code block} speak; what it adds belongs to that part of the plan.
   *
   * @param isDone whether the part is there already: nothing of it is bought or done
   * @throws PlanException (DUPLICATE) inside another part
   */
  public void inPart(String name, boolean isDone, SourceRef place, Runnable block) {
    if (!part.isEmpty()) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          place,
          "'" + name + "' stands inside '" + part + "'; close that block first");
    }
    part = name;
    attributes.part(name);
    if (isDone) {
      done.add(name);
    }
    try {
      block.run();
    } finally {
      part = "";
      attributes.part("");
    }
  }

  /**
   * Lets {@code block} speak of one thing that is there already: nothing of it is bought or done.
   *
   * @throws PlanException (CONTRADICTION) inside a part that is still to be made
   */
  public void built(SourceRef place, Runnable block) {
    if (done.contains(part)) {
      block.run();
      return;
    }
    if (!part.isEmpty()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          place,
          "this is built, but stands inside '"
              + part
              + "', which is still to be made; write it outside of that block");
    }
    inPart(PartTurn.BUILT, true, place, block);
  }

  public void parameter(String name, String value) {
    parameters.put(name, value);
  }

  /**
   * The immutable plan.
   *
   * @throws PlanException with all elements that cannot be finished
   */
  public Plan freeze() {
    List<Element> finished = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (ElementDraft draft : elements.values()) {
      try {
        finished.add(draft.freeze());
      } catch (PlanException e) {
        problems.addAll(e.at(draft.place()).problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    Attributes said = attributes.build();
    if (!done.isEmpty()) {
      Map<String, PartTurn> turns = new TreeMap<>();
      done.forEach(name -> turns.put(name, PartTurn.DONE));
      said = said.with(PartTurn.TURNS, new PartTurns("", turns), SourceRef.NONE);
    }
    return new Plan(info, site(), lot(), finished, said, parameters);
  }
}
