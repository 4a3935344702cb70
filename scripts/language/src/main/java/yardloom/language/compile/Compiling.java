package yardloom.language.compile;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.limit.RunLimits;
import yardloom.language.text.Hidden;

/** Compiles a plan and all that it includes, and reads the data it names, before anything runs. */
public final class Compiling {
  private static final long MAX_DATA = 8 << 20;

  private final StoringCompiler compiler;
  private final RunLimits limits;
  private final ScriptFiles folder;
  private final Optional<String> unsaved;
  private final Map<Path, ScriptCompiler.Compiled> done = new LinkedHashMap<>();
  private final Map<String, String> files = new HashMap<>();
  private final Map<String, String> texts = new HashMap<>();
  private final Map<Path, Path> asked = new TreeMap<>();
  private final Map<Path, String> sums = new HashMap<>();
  private final TreeSet<Problem> problems = new TreeSet<>();
  private final Deque<Path> open = new ArrayDeque<>();

  /**
   * @param unsaved the text of the plan itself, where it is not to be read from its file
   */
  public Compiling(
      ScriptCompiler compiler,
      CompileCache cache,
      RunLimits limits,
      Path plan,
      Optional<String> unsaved) {
    this.unsaved = unsaved;
    this.compiler = new StoringCompiler(compiler, cache.store(), cache.stamp());
    this.limits = limits;
    this.folder = ScriptFiles.around(plan);
  }

  /** Compiles {@code real}, looked for as {@code shown}, which is its name in messages. */
  public ScriptCompiler.Compiled compile(Path real, String shown) {
    asked.put(Path.of(shown), real);
    return compiled(real, shown);
  }

  private ScriptCompiler.Compiled compiled(Path real, String shown) {
    ScriptCompiler.Compiled earlier = done.get(real);
    if (earlier != null) {
      return earlier;
    }
    if (open.contains(real)) {
      throw new PlanException(ProblemCode.CYCLE, "'" + shown + "' includes itself");
    }
    if (open.size() > limits.includeDepth()) {
      throw new PlanException(
          ProblemCode.LIMIT, "files include files more than " + limits.includeDepth() + " deep");
    }
    open.push(real);
    try {
      return made(real, shown);
    } finally {
      open.pop();
    }
  }

  private ScriptCompiler.Compiled made(Path real, String shown) {
    String name = "plan" + files.size();
    files.put(name, shown);
    String source =
        open.size() == 1 && unsaved.isPresent()
            ? ScriptFiles.plain(unsaved.get())
            : ScriptFiles.read(real, shown);
    sums.put(real, SourceFile.sum(source));
    ScriptCompiler.Compiled made =
        compiler.compile(
            source,
            shown,
            name,
            new ScriptCompiler.Includes() {
              @Override
              public Map.Entry<String, List<String>> read(String wanted) {
                Path path = folder.included(wanted, real);
                asked.put(real.resolveSibling(script(wanted)), path);
                ScriptCompiler.Compiled part = compiled(path, beside(shown, script(wanted)));
                return Map.entry(part.className(), part.parameters());
              }

              @Override
              public String text(String wanted) {
                Path path = folder.data(wanted, real);
                asked.put(real.resolveSibling(wanted), path);
                return dataFile(path, beside(shown, wanted));
              }
            });
    problems.addAll(made.problems());
    done.put(real, made);
    return made;
  }

  /** Reads a data file once; the key is its real path, which no script sees. */
  private String dataFile(Path real, String shown) {
    String key = real.toString();
    if (!texts.containsKey(key)) {
      String text = ScriptFiles.read(real, shown);
      Hidden.inData(text)
          .ifPresent(
              what -> {
                throw new PlanException(ProblemCode.FORBIDDEN, shown + what);
              });
      texts.put(key, text);
      sums.put(real, SourceFile.sum(texts.get(key)));
      if (texts.values().stream().mapToLong(String::length).sum() > MAX_DATA) {
        throw new PlanException(
            ProblemCode.LIMIT, "the data files of a plan are together larger than 8 MB");
      }
    }
    return key;
  }

  private static String beside(String shown, String file) {
    return Path.of(shown).resolveSibling(file).normalize().toString();
  }

  private static String script(String wanted) {
    return wanted.endsWith(".groovy") ? wanted : wanted + ".groovy";
  }

  /** The files that were read, by the place where they were looked for. */
  public List<SourceFile> sources() {
    List<SourceFile> all = new ArrayList<>();
    asked.forEach(
        (place, real) ->
            all.add(new SourceFile(place.toString(), real.toString(), sums.get(real))));
    return all;
  }

  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** The parameters of the plan itself. */
  public List<String> parameters() {
    return done.values().stream()
        .filter(c -> c.className().equals("plan0"))
        .findFirst()
        .map(ScriptCompiler.Compiled::parameters)
        .orElse(List.of());
  }

  /** The file of each compiled class. */
  public Map<String, String> files() {
    return files;
  }

  /** The data files that the scripts name, by key. */
  public Map<String, String> texts() {
    return Map.copyOf(texts);
  }

  public Map<String, byte[]> classes() {
    Map<String, byte[]> all = new HashMap<>();
    done.values().forEach(c -> all.putAll(c.classes()));
    return all;
  }
}
