package yardloom.language.compile;

import groovy.lang.GroovyClassLoader;
import groovyjarjarasm.asm.ClassTooLargeException;
import groovyjarjarasm.asm.MethodTooLargeException;
import java.io.Reader;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.AnnotationNode;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.ast.ModuleNode;
import org.codehaus.groovy.ast.Parameter;
import org.codehaus.groovy.ast.stmt.BlockStatement;
import org.codehaus.groovy.ast.stmt.Statement;
import org.codehaus.groovy.classgen.VariableScopeVisitor;
import org.codehaus.groovy.control.CompilationFailedException;
import org.codehaus.groovy.control.CompilationUnit;
import org.codehaus.groovy.control.CompilerConfiguration;
import org.codehaus.groovy.control.MultipleCompilationErrorsException;
import org.codehaus.groovy.control.ParserPlugin;
import org.codehaus.groovy.control.ParserPluginFactory;
import org.codehaus.groovy.control.Phases;
import org.codehaus.groovy.control.SourceUnit;
import org.codehaus.groovy.control.messages.ExceptionMessage;
import org.codehaus.groovy.syntax.ParserException;
import org.codehaus.groovy.syntax.Reduction;
import org.codehaus.groovy.tools.GroovyClass;
import org.codehaus.groovy.transform.sc.StaticCompileTransformation;
import org.codehaus.groovy.transform.stc.StaticTypeCheckingVisitor;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Lexicon;
import yardloom.language.bytes.Allowed;
import yardloom.language.bytes.ClassGate;
import yardloom.language.bytes.ListedLoader;
import yardloom.language.text.RawScript;
import yardloom.language.text.Report;
import yardloom.language.text.SourceText;
import yardloom.language.text.TextGate;
import yardloom.language.tree.Parts;
import yardloom.language.tree.Tree;
import yardloom.language.type.HostClasses;
import yardloom.language.typed.PlainCasts;
import yardloom.language.typed.TypedPass;
import yardloom.language.word.Names;
import yardloom.language.word.Rewriter;
import yardloom.language.word.ScriptSetting;
import yardloom.language.word.WordCalls;

/**
 * Compiles one script through all gates: text, raw tree, words, types, finished bytes.
 *
 * <p>Groovy parses the text; this package makes a fresh class from the raw tree, in which every
 * call is spelled out; Groovy compiles only that class, statically. The raw tree is thrown away.
 */
public final class ScriptCompiler {
  private static final String TOO_LONG =
      "this is too long to be compiled; most room is taken from here on. Write what repeats as a"
          + " loop or a helper, read long lists from a file, or spread the plan over included"
          + " files";

  private final Lexicon lexicon;
  private final HostClasses host;
  private final BiFunction<String, String, Optional<String>> missing;
  private final Allowed allowed;
  private String vocabulary;

  /**
   * @param missing the shipped plugin that offers a word (block name, word) but is not loaded
   */
  public ScriptCompiler(
      Lexicon lexicon, HostClasses host, BiFunction<String, String, Optional<String>> missing) {
    this.lexicon = lexicon;
    this.host = host;
    this.missing = missing;
    this.allowed = new Allowed(lexicon, host);
  }

  /**
   * A compiled script, or why there is none.
   *
   * @param className the class to run
   * @param classes its bytes by class name; empty if there are problems
   * @param parameters the parameters it declares
   */
  public record Compiled(
      String className,
      Map<String, byte[]> classes,
      List<String> parameters,
      List<Problem> problems) {}

  /** Finds the files that a script names. */
  public interface Includes {
    /**
     * The included script; its key is given back when the script runs.
     *
     * @throws yardloom.kernel.problem.PlanException if it cannot be read or may not be
     */
    Map.Entry<String, List<String>> read(String name);

    /**
     * A data file; its key is given back when the script runs.
     *
     * @throws yardloom.kernel.problem.PlanException if it cannot be read or may not be
     */
    String text(String name);
  }

  /** A loader that shows compiled scripts the listed classes and nothing else. */
  public ClassLoader loader(Map<String, byte[]> classes) {
    return loader(classes, List.of());
  }

  /**
   * The same for classes that were changed after they passed the gate.
   *
   * @param more what they need besides
   */
  public ClassLoader loader(Map<String, byte[]> classes, List<Class<?>> more) {
    Map<String, Class<?>> listed = new HashMap<>(allowed.classes());
    more.forEach(c -> listed.put(c.getName(), c));
    ListedLoader loader = new ListedLoader(listed);
    loader.add(classes);
    return loader;
  }

  /**
   * Reads and compiles {@code text}.
   *
   * @param file the file as the user named it, for messages
   * @param className a neutral name for the class
   */
  public Compiled compile(String text, String file, String className, Includes includes) {
    Report report = new Report(file);
    SourceText source = new SourceText(text);
    if (!TextGate.passes(text, report)) {
      return failed(className, List.of(), report);
    }
    ModuleNode raw = RawScript.parse(text, source, report);
    if (raw == null) {
      return failed(className, List.of(), report);
    }
    RawScript.checkShell(raw, report);
    ClassNode program =
        new ClassNode(
            className, Modifier.PUBLIC | Modifier.FINAL, ClassHelper.make(host.program()));
    ScriptSetting setting =
        new ScriptSetting(
            lexicon,
            missing,
            new ScriptSetting.Includes() {
              @Override
              public ScriptSetting.Included read(String name) {
                Map.Entry<String, List<String>> found = includes.read(name);
                return new ScriptSetting.Included(found.getKey(), found.getValue());
              }

              @Override
              public String text(String name) {
                return includes.text(name);
              }
            });
    Rewriter rewriter = new Rewriter(report, host, setting, program, source);
    Map<MethodNode, Statement> bodies = fill(program, raw, rewriter);
    List<String> parameters =
        rewriter.params().stream().map(WordCalls.Declared::name).distinct().toList();
    bodies.values().forEach(b -> Parts.cut(b, Tree.method(host.guard(), "part")));
    Map<String, byte[]> classes = generate(program, bodies, report);
    if (!report.isEmpty()) {
      return failed(className, parameters, report);
    }
    for (String fault : faults(className, classes)) {
      report.add(
          ProblemCode.FORBIDDEN, 1, 1, "the finished script would use what it may not: " + fault);
    }
    return report.isEmpty()
        ? new Compiled(className, Map.copyOf(classes), parameters, List.of())
        : failed(className, parameters, report);
  }

  /** What the class gate refuses in finished classes; empty if they may be run. */
  Set<String> faults(String className, Map<String, byte[]> classes) {
    Set<String> faults = new TreeSet<>();
    try {
      classes.values().forEach(c -> faults.addAll(new ClassGate(allowed, className).check(c)));
    } catch (RuntimeException e) {
      faults.add("no class: " + e.getMessage());
    }
    return faults;
  }

  /** The words as compiled scripts call them: another text, other scripts. */
  synchronized String vocabulary() {
    if (vocabulary == null) {
      vocabulary =
          lexicon.all().stream()
              .map(w -> w.name() + " " + w.method().toGenericString() + " " + w.parameters() + "\n")
              .sorted()
              .collect(Collectors.joining());
    }
    return vocabulary;
  }

  private static Compiled failed(String className, List<String> parameters, Report report) {
    return new Compiled(className, Map.of(), parameters, report.problems());
  }

  /**
   * Adds the methods, still empty; their bodies are put in just before the static pass, because
   * Groovy's name resolution copies nodes and forgets what is noted on them. There is nothing left
   * to resolve: every type is known and every name declared.
   */
  private static Map<MethodNode, Statement> fill(
      ClassNode program, ModuleNode raw, Rewriter rewriter) {
    List<MethodNode> helpers = new ArrayList<>(raw.getMethods());
    rewriter.helpers().declare(helpers);
    List<MethodNode> heads = new ArrayList<>();
    helpers.forEach(h -> heads.add(rewriter.helpers().head(h)));
    Names.Block[] block = new Names.Block[1];
    Statement code = rewriter.plan(raw.getStatementBlock().getStatements(), block);
    Map<MethodNode, Statement> bodies = new LinkedHashMap<>();
    for (int i = 0; i < heads.size(); i++) {
      bodies.put(heads.get(i), rewriter.helpers().body(helpers.get(i), heads.get(i)));
      program.addMethod(heads.get(i));
    }
    Parameter plan = new Parameter(ClassHelper.make(PlanScope.class), block[0].variable());
    MethodNode run =
        program.addMethod(
            "run",
            Modifier.PUBLIC,
            ClassHelper.VOID_TYPE,
            new Parameter[] {plan},
            ClassNode.EMPTY_ARRAY,
            new BlockStatement());
    bodies.put(run, code);
    return bodies;
  }

  private Map<String, byte[]> generate(
      ClassNode program, Map<MethodNode, Statement> bodies, Report report) {
    CompilerConfiguration configuration = new CompilerConfiguration();
    configuration.setTargetBytecode(CompilerConfiguration.JDK17);
    configuration.setPluginFactory(
        new ParserPluginFactory() {
          @Override
          public ParserPlugin createParserPlugin() {
            return new Ready(program);
          }
        });
    GroovyClassLoader loader =
        new GroovyClassLoader(new ListedLoader(allowed.compilerClasses()), configuration, false);
    CompilationUnit unit = new CompilationUnit(configuration, null, loader);
    unit.addSource(program.getName(), "");
    Static pass = new Static(unit, report);
    unit.addPhaseOperation(
        (CompilationUnit.IPrimaryClassNodeOperation)
            (from, context, node) -> {
              if (node == program) {
                bodies.forEach(MethodNode::setCode);
                new VariableScopeVisitor(from).visitClass(node);
                pass.run(from, node);
              }
            },
        Phases.INSTRUCTION_SELECTION);
    try {
      unit.compile(Phases.INSTRUCTION_SELECTION);
      if (!report.isEmpty()) {
        return Map.of();
      }
      unit.compile(Phases.CLASS_GENERATION);
    } catch (CompilationFailedException e) {
      if (report.isEmpty() && isTooLong(e)) {
        report.add(ProblemCode.LIMIT, Parts.longest(bodies.values()), TOO_LONG);
      } else if (report.isEmpty()) {
        String first = e.getMessage().lines().skip(1).findFirst().orElse(e.getMessage());
        report.add(ProblemCode.SYNTAX, 1, 1, "this cannot be compiled: " + first);
      }
      return Map.of();
    }
    Map<String, byte[]> classes = new HashMap<>();
    for (GroovyClass each : unit.getClasses()) {
      classes.put(each.getName(), PlainCasts.in(each.getBytes()));
    }
    return classes;
  }

  private static boolean isTooLong(CompilationFailedException thrown) {
    return thrown instanceof MultipleCompilationErrorsException many
        && many.getErrorCollector().getErrors().stream()
            .map(m -> m instanceof ExceptionMessage e ? e.getCause() : null)
            .anyMatch(
                c -> c instanceof MethodTooLargeException || c instanceof ClassTooLargeException);
  }

  /** Groovy's static compilation with our visitor. */
  private final class Static extends StaticCompileTransformation {
    private final Report report;

    Static(CompilationUnit unit, Report report) {
      this.report = report;
      setCompilationUnit(unit);
    }

    void run(SourceUnit source, ClassNode node) {
      AnnotationNode mark =
          new AnnotationNode(ClassHelper.make(groovy.transform.CompileStatic.class));
      visit(new ASTNode[] {mark, node}, source);
    }

    @Override
    protected StaticTypeCheckingVisitor newVisitor(SourceUnit source, ClassNode node) {
      return new TypedPass(source, node, report, host);
    }
  }

  /**
   * Hands the fresh class to Groovy as if it had been parsed. Groovy parses a few words of its own
   * when it types the closures of its library; those go to its own parser.
   */
  private static final class Ready implements ParserPlugin {
    private final ClassNode program;
    private final ParserPlugin groovy = ParserPluginFactory.antlr4().createParserPlugin();

    Ready(ClassNode program) {
      this.program = program;
    }

    private boolean isProgram(SourceUnit source) {
      return source.getName().equals(program.getName());
    }

    @Override
    public Reduction parseCST(SourceUnit source, Reader reader) throws CompilationFailedException {
      return isProgram(source) ? null : groovy.parseCST(source, reader);
    }

    @Override
    public ModuleNode buildAST(SourceUnit source, ClassLoader loader, Reduction cst)
        throws ParserException {
      if (!isProgram(source)) {
        return groovy.buildAST(source, loader, cst);
      }
      ModuleNode module = new ModuleNode(source);
      module.addClass(program);
      return module;
    }
  }
}
