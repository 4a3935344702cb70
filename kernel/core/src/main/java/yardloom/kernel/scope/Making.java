package yardloom.kernel.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Standing;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** The steps that all words which make an element share. */
public final class Making {
  private static final int LONGEST_NAME = 60;

  private Making() {}

  public static ElementId id(ElementKind kind, String name) {
    return new ElementId(kind, name(kind.word(), name));
  }

  public static String name(String what, String name) {
    if (name.isBlank() || !name.equals(name.strip()) || name.length() > LONGEST_NAME) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the name of a "
              + what
              + " needs 1 to "
              + LONGEST_NAME
              + " letters without spaces at its ends, got '"
              + name
              + "'");
    }
    return plain(what, name);
  }

  /**
   * The name of something whose length is not limited.
   *
   * @throws PlanException (OUT_OF_RANGE) if it breaks the line, steers a terminal or turns the
   *     direction of what is written behind it
   */
  public static String plain(String what, String name) {
    return oneLine("the name of a " + what, name);
  }

  private static String oneLine(String what, String text) {
    if (text.chars().anyMatch(Making::steers)) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, what + " must be one line of plain text");
    }
    return text;
  }

  /**
   * A text without the spaces at its ends.
   *
   * @param what the text, as the message has it
   * @param most letters, those spaces included
   * @throws PlanException (OUT_OF_RANGE) if it is blank or longer
   */
  public static String text(PlanScope in, String what, String text, int most) {
    if (text.isBlank() || text.length() > most) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          what + " has 1 to " + most + " letters, got " + text.length());
    }
    return text.strip();
  }

  /**
   * The same, where it goes into one line.
   *
   * @throws PlanException (OUT_OF_RANGE) also for what {@link #plain} refuses
   */
  public static String line(PlanScope in, String what, String text, int most) {
    return oneLine(what, text(in, what, text, most));
  }

  /** Control characters, breaks of lines, and the marks that override the direction of writing. */
  private static boolean steers(int c) {
    return Character.isISOControl(c)
        || c == 0x2028
        || c == 0x2029
        || c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069;
  }

  /**
   * Makes something that may be there already, as its word says with {@code built:}; then nothing
   * of it is bought or done, whatever its block says.
   *
   * @throws PlanException (CONTRADICTION) if it is, in a stage that is still to be made
   */
  public static <T> T built(PlanScope in, Boolean built, Supplier<T> make) {
    List<T> made = new ArrayList<>();
    add(in, built, () -> made.add(make.get()));
    return made.get(0);
  }

  /** The same for what gives nothing back. */
  public static void add(PlanScope in, Boolean built, Runnable make) {
    if (Boolean.TRUE.equals(built)) {
      in.draft().built(in.place(), make);
    } else {
      make.run();
    }
  }

  public static ElementDraft add(
      PlanScope in, ElementId id, Function<Element.Common, ? extends Element> finish) {
    return in.draft().add(id, in.place(), finish);
  }

  /** Keeps what the script says with {@code standing:}, if it does. */
  public static ElementDraft standing(ElementDraft element, Boolean standing) {
    if (standing != null) {
      element.attributes().add(Standing.KEY, standing, element.place());
    }
    return element;
  }

  /**
   * Refuses a second statement in one file. A later file replaces what an earlier one said, so that
   * a plan that includes a regional file at its top has the last word.
   */
  public static <T> void once(PlanScope in, AttributeKey<T> key, Predicate<T> same, String what) {
    once(in, in.place(), key, same, what);
  }

  /** The same for a row of a table, which a message names as its place. */
  public static <T> void once(
      PlanScope in, SourceRef row, AttributeKey<T> key, Predicate<T> same, String what) {
    in.draft()
        .attributes()
        .saidInFile(key, in.place(), same)
        .ifPresent(
            earlier -> {
              throw new PlanException(
                  ProblemCode.DUPLICATE, row, what + " is already given at " + earlier.place());
            });
  }

  public static void requireGround(ElementId id, Shape shape) {
    if (shape.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          id + " covers no ground; its shape is empty, perhaps because a `-` or `&` took it all");
    }
  }

  /** Reads the block, if the script gave one. */
  public static <S> void read(
      Consumer<S> block, Opening<S> opening, PlanScope in, ElementDraft element) {
    if (block != null) {
      block.accept(opening.open(in.draft(), element, in.place()));
    }
  }

  /** The constructor of a block type. */
  public interface Opening<S> {
    S open(Draft draft, ElementDraft element, SourceRef place);
  }
}
