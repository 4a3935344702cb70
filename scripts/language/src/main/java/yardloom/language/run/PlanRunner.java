package yardloom.language.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Lexicon;
import yardloom.language.compile.CompileCache;
import yardloom.language.compile.Compiling;
import yardloom.language.compile.MissingWords;
import yardloom.language.compile.ScriptCompiler;
import yardloom.language.compile.ScriptFiles;
import yardloom.language.compile.SourceFile;
import yardloom.language.form.FormPlan;
import yardloom.language.form.FormReader;
import yardloom.language.form.FormWriter;
import yardloom.language.form.Step;
import yardloom.language.limit.Meter;
import yardloom.language.limit.RunLimits;
import yardloom.language.limit.Watch;
import yardloom.language.record.Recorder;
import yardloom.language.record.Recording;
import yardloom.language.type.HostClasses;
import yardloom.language.value.NumberUnits;
import yardloom.language.value.Operators;
import yardloom.language.value.Values;

/**
 * Turns a plan script into a plan: reads and checks it whole, then runs it within its limits.
 *
 * <p>Errors: every method throws or returns {@link Problem}s with file, line and column where
 * known; never a stack trace. A runner may be used for many scripts, one at a time or at once.
 */
public final class PlanRunner {
  private static final HostClasses HOST =
      new HostClasses(
          Operators.class,
          Values.class,
          NumberUnits.class,
          Guard.class,
          Builtins.class,
          PlanProgram.class);

  private final Lexicon lexicon;
  private final MissingWords missing;
  private final RunLimits limits;
  private final ScriptCompiler compiler;
  private final CompileCache cache;

  public PlanRunner(Lexicon lexicon, RunLimits limits, MissingWords missing) {
    this(lexicon, limits, missing, CompileCache.OFF);
  }

  /** A runner that keeps compiled scripts. */
  public PlanRunner(Lexicon lexicon, RunLimits limits, MissingWords missing, CompileCache cache) {
    this.lexicon = lexicon;
    this.missing = missing;
    this.limits = limits;
    this.cache = cache;
    this.compiler = new ScriptCompiler(lexicon, HOST, missing::pluginOf);
  }

  /**
   * Runs a script.
   *
   * @param overrides values of parameters by name, as text with unit
   * @throws PlanException with all problems, sorted by place
   */
  public Plan run(Path script, Map<String, String> overrides) {
    return read(script, overrides).plan();
  }

  /**
   * Runs a script and names the files it was read from.
   *
   * @throws PlanException as {@link #run(Path, Map)} does
   */
  public ReadPlan read(Path script, Map<String, String> overrides) {
    return watched(
        script,
        meter ->
            isForm(script)
                ? spoken(script, overrides, meter)
                : run(script, overrides, meter, null));
  }

  private ReadPlan spoken(Path script, Map<String, String> overrides, Meter meter) {
    String text = ScriptFiles.readForm(script);
    FormPlan form = FormReader.read(text, script.toString(), lexicon, missing::pluginOf);
    Plan plan = speak(script, form, overrides, meter);
    try {
      return new ReadPlan(plan, List.of(SourceFile.of(script, text)));
    } catch (IOException e) {
      throw unreadable(script);
    }
  }

  private static PlanException unreadable(Path script) {
    return new PlanException(
        ProblemCode.FILE, new SourceRef(script.toString(), 0, 0), "the file cannot be read");
  }

  /**
   * Runs a plan and writes down which words it speaks: its JSON form, for {@link FormWriter}.
   *
   * @throws PlanException as {@link #run(Path, Map)} does; the form of a wrong plan is not made
   */
  public List<Step> record(Path script, Map<String, String> overrides) {
    if (isForm(script)) {
      return watched(
          script,
          meter -> {
            FormPlan form = form(script);
            speak(script, form, overrides, meter);
            return form.steps();
          });
    }
    Recorder recorder = new Recorder(lexicon);
    watched(script, meter -> run(script, overrides, meter, recorder));
    return recorder.steps();
  }

  /** The problems that reading finds; nothing of the script runs. */
  public List<Problem> check(Path script) {
    try {
      return watched(
          script, meter -> isForm(script) ? form(script).problems() : compiled(script).problems());
    } catch (PlanException e) {
      return e.problems();
    }
  }

  /** The same for a script as an editor has it, which need not be saved; its file must be there. */
  public List<Problem> check(Path script, String text) {
    try {
      return watched(script, meter -> compiled(script, Optional.of(text)).problems());
    } catch (PlanException e) {
      return e.problems();
    }
  }

  /** The name of a plan's file without its ending. */
  public static String bareName(Path plan) {
    return plan.getFileName().toString().replaceFirst("\\.groovy$|(\\.plan)?\\.json$", "");
  }

  /** Whether a plan is read as JSON; every other is a script. */
  private static boolean isForm(Path plan) {
    return plan.toString().endsWith(".json");
  }

  private <R> R watched(Path script, java.util.function.Function<Meter, R> work) {
    Faults plain = new Faults(Map.of(), script.toString());
    try {
      return Watch.over(limits, work);
    } catch (PlanException e) {
      throw e;
    } catch (Throwable e) {
      throw plain.problem(e, new Meter(limits, Thread.currentThread()));
    }
  }

  private FormPlan form(Path script) {
    return FormReader.read(
        ScriptFiles.readForm(script), script.toString(), lexicon, missing::pluginOf);
  }

  private Compiling compiled(Path script) {
    return compiled(script, Optional.empty());
  }

  private Compiling compiled(Path script, Optional<String> unsaved) {
    // What is typed at one moment is not worth keeping.
    CompileCache kept = unsaved.isPresent() ? CompileCache.OFF : cache;
    Compiling compiling = new Compiling(compiler, kept, limits, script, unsaved);
    try {
      compiling.compile(script.toRealPath(), script.toString());
    } catch (IOException e) {
      throw unreadable(script);
    }
    return compiling;
  }

  private ReadPlan run(Path script, Map<String, String> overrides, Meter meter, Recorder recorder) {
    Compiling compiling = compiled(script);
    List<Problem> problems = new ArrayList<>(compiling.problems());
    problems.addAll(unknown(script, overrides, compiling.parameters()));
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    Map<String, byte[]> classes = compiling.classes();
    ClassLoader loader =
        recorder == null
            ? compiler.loader(classes)
            : compiler.loader(
                new Recording(recorder, NumberUnits.class).of(classes), Recording.needed());
    Faults faults = new Faults(compiling.files(), script.toString());
    Draft draft = new Draft(info(script));
    Run run =
        new Run(draft, key -> program(loader, key), overrides, compiling.texts(), faults, recorder);
    return new ReadPlan(ended(script, run, draft, meter), compiling.sources());
  }

  private Plan speak(Path script, FormPlan form, Map<String, String> overrides, Meter meter) {
    List<Problem> problems = new ArrayList<>(form.problems());
    for (String name : overrides.keySet()) {
      if (form.fixed().contains(name)) {
        problems.add(
            new Problem(
                ProblemCode.FORBIDDEN,
                new SourceRef(script.toString(), 0, 0),
                "the parameter `"
                    + name
                    + "` is fixed: the plan was written with its value worked in; set it where"
                    + " the plan is converted"));
      }
    }
    Map<String, String> rest = new TreeMap<>(overrides);
    rest.keySet().removeAll(form.fixed());
    problems.addAll(unknown(script, rest, form.parameters()));
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    Draft draft = new Draft(info(script));
    Faults faults = new Faults(Map.of(), script.toString());
    Run run = new Run(draft, key -> new FormProgram(form), overrides, Map.of(), faults, null);
    return ended(script, run, draft, meter);
  }

  private static Plan ended(Path script, Run run, Draft draft, Meter meter) {
    meter.startRunning();
    try {
      run.start("plan0", new SourceRef(script.toString(), 1, 1));
      run.refuseIfFailed();
      return draft.freeze();
    } catch (Throwable thrown) {
      throw run.ended(thrown, meter);
    }
  }

  private static List<Problem> unknown(
      Path script, Map<String, String> overrides, List<String> known) {
    List<Problem> problems = new ArrayList<>();
    for (String name : overrides.keySet()) {
      if (!known.contains(name)) {
        problems.add(
            new Problem(
                ProblemCode.UNKNOWN_WORD,
                new SourceRef(script.toString(), 0, 0),
                "the plan has no parameter `"
                    + name
                    + "`."
                    + Nearest.hint(name, known)
                    + (known.isEmpty() ? " It has none" : " It has: " + String.join(", ", known))));
      }
    }
    return problems;
  }

  private static PlanProgram program(ClassLoader loader, String className) {
    try {
      return (PlanProgram) loader.loadClass(className).getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the compiled script cannot be started", e);
    }
  }

  private static PlanInfo info(Path script) {
    String file = bareName(script);
    String id =
        file.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return new PlanInfo(id.isEmpty() ? "plan" : id, file, "", "", "", "", UnitSystem.US, "USD");
  }
}
