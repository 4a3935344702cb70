package yardloom.language.compile;

/**
 * Where compiled scripts are kept, and what they depend on beside their text and the vocabulary.
 *
 * @param stamp changes with every build of the program
 */
public record CompileCache(ScriptStore store, String stamp) {
  public static final CompileCache OFF = new CompileCache(ScriptStore.NONE, "");
}
