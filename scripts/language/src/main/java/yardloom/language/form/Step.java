package yardloom.language.form;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Word;

/** One statement of a plan in its JSON form. */
public sealed interface Step {
  SourceRef place();

  /**
   * A call of a word, as a statement or as a value.
   *
   * @param values one for each parameter of the word, empty where it is left out
   * @param blocks what stands in its block, empty if it has none; several where a word that makes
   *     several things reads its block for each and it says something else each time
   * @param name what later steps call its value; null if none does
   * @param place where it stands, which findings name
   */
  record Call(
      Word word,
      List<Optional<Value>> values,
      List<List<Step>> blocks,
      String name,
      SourceRef place)
      implements Step, Value {}

  /** The statements of an included file, which count as a file of their own. */
  record Include(String file, List<Step> block, SourceRef place) implements Step {}

  /**
   * A parameter.
   *
   * @param fixed whether its value is worked into the rest already
   */
  record Param(String name, Value value, String help, boolean fixed, SourceRef place)
      implements Step {}
}
