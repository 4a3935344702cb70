package yardloom.kernel.vocab;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** All words that the loaded plugins offer, by block type and name. Immutable. */
public final class Lexicon {
  private final Map<String, Map<String, Word>> byScope;

  private Lexicon(Map<String, Map<String, Word>> byScope) {
    this.byScope = byScope;
  }

  /**
   * Reads the annotated methods.
   *
   * @throws PlanException (PLUGIN_CONFLICT) if two plugins offer one word in one block, or a word
   *     method is not of the required form
   */
  public static Lexicon of(Collection<Vocabulary> vocabularies) {
    Map<String, Map<String, Word>> words = new TreeMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Vocabulary vocabulary : vocabularies) {
      for (Class<?> type : vocabulary.wordClasses()) {
        for (Method method : methods(type)) {
          try {
            add(words, read(vocabulary.plugin(), method));
          } catch (IllegalArgumentException e) {
            problems.add(new Problem(ProblemCode.PLUGIN_CONFLICT, SourceRef.NONE, e.getMessage()));
          }
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new PlanException(problems);
    }
    return new Lexicon(words);
  }

  private static List<Method> methods(Class<?> type) {
    List<Method> found = new ArrayList<>();
    for (Method method : type.getDeclaredMethods()) {
      if (method.isAnnotationPresent(Verb.class)) {
        found.add(method);
      }
    }
    found.sort(Comparator.comparing(Method::getName));
    return found;
  }

  private static void add(Map<String, Map<String, Word>> words, Word word) {
    Word earlier =
        words.computeIfAbsent(word.scope().getName(), k -> new TreeMap<>()).put(word.name(), word);
    if (earlier != null) {
      throw new IllegalArgumentException(
          "the plugins "
              + earlier.plugin()
              + " and "
              + word.plugin()
              + " both offer `"
              + word.name()
              + "` in "
              + Scope.nameOf(word.scope())
              + "; load only one of them");
    }
  }

  private static Word read(String plugin, Method method) {
    Verb verb = method.getAnnotation(Verb.class);
    String name = verb.word().isEmpty() ? method.getName() : verb.word();
    String where = "word `" + name + "` of plugin " + plugin + ": ";
    require(
        Modifier.isStatic(method.getModifiers()) && Modifier.isPublic(method.getModifiers()),
        where + "its method must be public and static");
    require(!verb.help().isBlank() && !verb.example().isBlank(), where + "needs help and example");
    java.lang.reflect.Parameter[] parameters = method.getParameters();
    require(
        parameters.length > 0 && Scope.class.isAssignableFrom(parameters[0].getType()),
        where + "its first parameter must be a Scope");
    List<Word.Parameter> read = new ArrayList<>();
    Optional<Class<? extends Scope>> inner = Optional.empty();
    for (int i = 1; i < parameters.length; i++) {
      if (parameters[i].getType() == Consumer.class) {
        require(i == parameters.length - 1, where + "the block must come last");
        inner = Optional.of(innerScope(parameters[i], where));
      } else {
        read.add(parameter(parameters[i], where));
      }
    }
    return new Word(
        name,
        plugin,
        parameters[0].getType().asSubclass(Scope.class),
        verb.help(),
        verb.example(),
        List.copyOf(read),
        inner,
        method);
  }

  private static Word.Parameter parameter(java.lang.reflect.Parameter p, String where) {
    Arg arg = p.getAnnotation(Arg.class);
    Opt opt = p.getAnnotation(Opt.class);
    require((arg == null) != (opt == null), where + "each parameter needs @Arg or @Opt");
    require(
        !p.getType().isPrimitive(),
        where + "parameters must be objects, so that null can stand for absent");
    return arg != null
        ? new Word.Parameter(
            arg.name(), p.getType(), arg.help(), false, true, "", choices(arg.choices()))
        : new Word.Parameter(
            opt.name(),
            p.getType(),
            opt.help(),
            true,
            opt.required(),
            opt.fallback(),
            choices(opt.choices()));
  }

  private static List<String> choices(Class<? extends Enum<?>> type) {
    return type == Opt.AnyText.class ? List.of() : Choices.of(type);
  }

  private static Class<? extends Scope> innerScope(java.lang.reflect.Parameter p, String where) {
    if (p.getParameterizedType() instanceof ParameterizedType generic
        && generic.getActualTypeArguments()[0] instanceof Class<?> scope
        && Scope.class.isAssignableFrom(scope)) {
      return scope.asSubclass(Scope.class);
    }
    throw new IllegalArgumentException(where + "the block must be a Consumer of a Scope type");
  }

  private static void require(boolean condition, String message) {
    if (!condition) {
      throw new IllegalArgumentException(message);
    }
  }

  /**
   * The word {@code name} in blocks of {@code scope}. A word whose first parameter is {@link Scope}
   * itself, such as {@code point}, may stand in every block.
   */
  public Optional<Word> word(Class<? extends Scope> scope, String name) {
    return Optional.ofNullable(wordsOf(scope).get(name));
  }

  /** The words that may stand in a block, by name. */
  public List<Word> words(Class<? extends Scope> scope) {
    return List.copyOf(wordsOf(scope).values());
  }

  private Map<String, Word> wordsOf(Class<? extends Scope> scope) {
    Map<String, Word> words = new TreeMap<>(byScope.getOrDefault(Scope.class.getName(), Map.of()));
    words.putAll(byScope.getOrDefault(scope.getName(), Map.of()));
    return words;
  }

  /** All words, by block type and name. */
  public List<Word> all() {
    return byScope.values().stream().flatMap(m -> m.values().stream()).toList();
  }

  /** The names of all words. */
  public TreeSet<String> names() {
    TreeSet<String> names = new TreeSet<>();
    all().forEach(w -> names.add(w.name()));
    return names;
  }

  /** Every block type that some word stands in or opens. */
  public List<Class<? extends Scope>> scopes() {
    Map<String, Class<? extends Scope>> found = new TreeMap<>();
    for (Word word : all()) {
      found.put(word.scope().getName(), word.scope());
      word.inner().ifPresent(s -> found.put(s.getName(), s));
    }
    return List.copyOf(found.values());
  }
}
