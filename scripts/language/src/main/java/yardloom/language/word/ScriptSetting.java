package yardloom.language.word;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import yardloom.kernel.vocab.Lexicon;

/**
 * What a script is read against.
 *
 * @param lexicon the words of the loaded plugins
 * @param missing the shipped plugin that offers a word (block name, word) but is not loaded
 * @param includes reads the scripts and data files that this one names
 */
public record ScriptSetting(
    Lexicon lexicon, BiFunction<String, String, Optional<String>> missing, Includes includes) {

  /** Finds the files that a script names. */
  public interface Includes {
    /**
     * The key under which the compiled file is kept, and the parameters it declares.
     *
     * @throws yardloom.kernel.problem.PlanException if there is no such file or it is not allowed
     */
    Included read(String name);

    /**
     * The key under which the text of a data file is kept.
     *
     * @throws yardloom.kernel.problem.PlanException if there is no such file or it is not allowed
     */
    String text(String name);
  }

  /** An included script. */
  public record Included(String key, List<String> parameters) {}
}
