package yardloom.language.compile;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;

/**
 * Compiles a script unless one of the same text, name and vocabulary, whose includes answer as they
 * did, was compiled before and still passes the class gate.
 *
 * <p>The key names all that the bytes depend on, the answers of includes excepted, which are asked
 * for again. A store that somebody else wrote into can therefore at worst give a script that does
 * other things that scripts may do.
 */
final class StoringCompiler {
  private final ScriptCompiler compiler;
  private final ScriptStore store;
  private final String stamp;

  /**
   * A compiler with a memory.
   *
   * @param stamp changes whenever the same text may compile to other bytes
   */
  StoringCompiler(ScriptCompiler compiler, ScriptStore store, String stamp) {
    this.compiler = compiler;
    this.store = store;
    this.stamp = stamp;
  }

  ScriptCompiler.Compiled compile(
      String text, String file, String className, ScriptCompiler.Includes includes) {
    if (store == ScriptStore.NONE) {
      return compiler.compile(text, file, className, includes);
    }
    String key = key(List.of(stamp, compiler.vocabulary(), className, file, text));
    Optional<StoredScript> known =
        store.get(key).flatMap(StoredScript::read).filter(s -> holds(s, className, includes));
    if (known.isPresent()) {
      StoredScript stored = known.get();
      return new ScriptCompiler.Compiled(
          className, Map.copyOf(stored.classes()), stored.parameters(), List.of());
    }
    Recorded recorded = new Recorded(includes);
    ScriptCompiler.Compiled made = compiler.compile(text, file, className, recorded);
    if (made.problems().isEmpty()) {
      store.put(
          key,
          new StoredScript(className, made.classes(), made.parameters(), recorded.asked).bytes());
    }
    return made;
  }

  private boolean holds(StoredScript stored, String className, ScriptCompiler.Includes includes) {
    if (!stored.className().equals(className)
        || !stored.classes().containsKey(className)
        || !compiler.faults(className, stored.classes()).isEmpty()) {
      return false;
    }
    try {
      Recorded again = new Recorded(includes);
      for (StoredScript.Asked each : stored.asked()) {
        if (each.script()) {
          again.read(each.name());
        } else {
          again.text(each.name());
        }
      }
      return again.asked.equals(stored.asked());
    } catch (PlanException e) {
      // The compiler asks again and says at which line.
      return false;
    }
  }

  private static String key(List<String> parts) {
    MessageDigest digest = Sha256.begin();
    for (String part : parts) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
      digest.update(bytes);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Passes questions on and notes the answers. */
  private static final class Recorded implements ScriptCompiler.Includes {
    private final ScriptCompiler.Includes includes;
    private final List<StoredScript.Asked> asked = new ArrayList<>();

    Recorded(ScriptCompiler.Includes includes) {
      this.includes = includes;
    }

    @Override
    public Map.Entry<String, List<String>> read(String name) {
      Map.Entry<String, List<String>> answer = includes.read(name);
      asked.add(new StoredScript.Asked(true, name, answer.getKey(), answer.getValue()));
      return answer;
    }

    @Override
    public String text(String name) {
      String answer = includes.text(name);
      asked.add(new StoredScript.Asked(false, name, answer, List.of()));
      return answer;
    }
  }
}
