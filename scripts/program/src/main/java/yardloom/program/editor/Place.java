package yardloom.program.editor;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/**
 * What surrounds a place of a script.
 *
 * @param kind what may stand there
 * @param block the block it lies in
 * @param word the word whose arguments it lies among
 * @param given the options that the word has been given before
 * @param option the option whose value is being written
 * @param argument how many arguments without a name stand before
 * @param start where the part begins that is being written there
 * @param part that part, as far as the place
 */
record Place(
    Kind kind,
    Class<? extends Scope> block,
    Optional<Word> word,
    Set<String> given,
    Optional<String> option,
    int argument,
    int start,
    String part) {

  /** What may stand at a place. */
  enum Kind {
    /** A statement may begin. */
    STATEMENT,
    /** An argument, or a value. */
    VALUE,
    /** A unit behind a number. */
    UNIT,
    /** The inside of a text. */
    TEXT,
    /** Nothing that the language knows: a comment, a property of something. */
    NOTHING
  }

  /** The parameter whose value is being written. */
  Optional<Word.Parameter> parameter() {
    if (word.isEmpty()) {
      return Optional.empty();
    }
    if (option.isPresent()) {
      return word.get().options().stream().filter(p -> p.name().equals(option.get())).findFirst();
    }
    return word.get().arguments().stream().skip(argument).findFirst();
  }
}
