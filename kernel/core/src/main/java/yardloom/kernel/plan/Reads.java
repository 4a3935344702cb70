package yardloom.kernel.plan;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What one reader (a calculator, a check, a maker of tables, layers or sheets) asked of the plan
 * and of its facts while it worked.
 *
 * <p>The note is taken where the question is answered, on the thread that asks: an element that is
 * handed on inside a fact is read by whoever works now, not by whoever first got it, so that a view
 * made for one reader would note for the wrong one. What runs on other threads must not read the
 * plan. Nothing is noted unless somebody asked for it by {@link #noting}.
 */
public final class Reads {
  private static final ThreadLocal<Reads> PRESENT = new ThreadLocal<>();

  private final Set<Question> questions = new LinkedHashSet<>();

  /** What can be asked. */
  public enum Topic {
    INFO,
    SITE,
    LOT,
    /** The file that the lot is written in, and nothing else of it. */
    LOT_FILE,
    PARAMETERS,
    /** All elements of a class, without their attributes. */
    KIND,
    /** One element by its id, without its attributes. */
    ELEMENT,
    /** One element with all its attributes, as a result holds it. */
    WHOLE_ELEMENT,
    /** All of the plan, as a result holds it. */
    WHOLE_PLAN,
    /** The values under one key of one element or of the plan. */
    ATTRIBUTE,
    /** The values of one fact. */
    FACT,
    /** The tables that are offered for one use. */
    OFFER
  }

  /**
   * One question.
   *
   * @param about a class, an id, a key; as the topic wants it
   */
  public record Question(Topic topic, Object about) {}

  /**
   * What an attribute is looked up by.
   *
   * @param of the element; null for the plan itself
   */
  public record Attribute(ElementId of, AttributeKey<?> key) {}

  /** What somebody gave, and all that it asked for before. */
  public record Noted<T>(T result, Set<Question> questions) {}

  private Reads() {}

  /** Lets {@code work} run on this thread and notes what it asks. */
  public static <T> Noted<T> noting(Supplier<T> work) {
    Reads outer = PRESENT.get();
    Reads reads = new Reads();
    PRESENT.set(reads);
    try {
      return new Noted<>(work.get(), reads.questions);
    } finally {
      PRESENT.set(outer);
    }
  }

  /** Notes a question of whoever works on this thread now. */
  public static void note(Topic topic, Object about) {
    Reads present = PRESENT.get();
    if (present != null) {
      present.questions.add(new Question(topic, about));
    }
  }
}
