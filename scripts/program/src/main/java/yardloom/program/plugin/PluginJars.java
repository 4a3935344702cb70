package yardloom.program.plugin;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.MalformedURLException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.vocab.Vocabulary;

/**
 * The plugins in the jars of some folders, in the order of their file names. A jar is code that
 * runs with all rights of its user, so only folders that the user names or owns are looked in,
 * never the plan's.
 */
public final class PluginJars {
  private static final String SERVICE = "META-INF/services/" + YardPlugin.class.getName();

  private final List<YardPlugin> plugins = new ArrayList<>();
  private final Map<String, Guest> guests = new TreeMap<>();

  private PluginJars() {}

  /**
   * The plugins of all jars in {@code folders}; a folder that is not there has none.
   *
   * @param program the loader of the program, whose classes every jar sees
   * @throws PlanException (PLUGIN_FAULT, PLUGIN_CONFLICT, FILE) with the jar and the cause
   */
  public static PluginJars in(List<Path> folders, ClassLoader program) {
    PluginJars all = new PluginJars();
    for (Path folder : folders) {
      jars(folder).forEach(jar -> all.add(jar, program));
    }
    all.refuseSharedWordClasses();
    return all;
  }

  /** All of them, each behind a guard. */
  public List<YardPlugin> plugins() {
    return Collections.unmodifiableList(plugins);
  }

  /** The jar of a plugin, by its id; empty for one of the program's own. */
  public Optional<Path> jarOf(String plugin) {
    return Optional.ofNullable(guests.get(plugin)).map(Guest::jar);
  }

  /** What to say of a fault that came out of a word: whose it is, if a guest's. */
  public Optional<PlanException> blamed(Throwable thrown) {
    for (StackTraceElement frame : thrown.getStackTrace()) {
      for (Guest guest : guests.values()) {
        if (guest.loader().defined(frame.getClassName())) {
          return Optional.of(guest.broken("broke in a word", thrown));
        }
      }
      if (frame.getClassName().startsWith("yardloom.")) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static List<Path> jars(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.getFileName().toString().endsWith(".jar"))
          .sorted(java.util.Comparator.comparing(f -> f.getFileName().toString()))
          .toList();
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.FILE,
          new SourceRef(folder.toString(), 0, 0),
          "this folder of plugins cannot be read: " + e.getMessage());
    }
  }

  private void add(Path jar, ClassLoader program) {
    List<String> names = services(jar);
    if (names.isEmpty()) {
      throw new PlanException(
          ProblemCode.PLUGIN_FAULT,
          new SourceRef(jar.toString(), 0, 0),
          "this jar holds no plugin: it lacks "
              + SERVICE
              + " with the name of a class; take it out of the folder of plugins");
    }
    JarLoader loader;
    try {
      loader = new JarLoader(jar, jar.toUri().toURL(), program);
    } catch (MalformedURLException e) {
      throw new PlanException(
          ProblemCode.FILE, new SourceRef(jar.toString(), 0, 0), "has no usable name");
    }
    names.forEach(name -> add(loader, name));
  }

  private static List<String> services(Path jar) {
    try (JarFile file = new JarFile(jar.toFile())) {
      ZipEntry entry = file.getEntry(SERVICE);
      if (entry == null) {
        return List.of();
      }
      try (BufferedReader in =
          new BufferedReader(
              new InputStreamReader(file.getInputStream(entry), StandardCharsets.UTF_8))) {
        return in.lines()
            .map(line -> line.replaceFirst("#.*", "").strip())
            .filter(line -> !line.isEmpty())
            .toList();
      }
    } catch (IOException | SecurityException e) {
      throw new PlanException(
          ProblemCode.PLUGIN_FAULT,
          new SourceRef(jar.toString(), 0, 0),
          "this jar cannot be read ("
              + e.getMessage()
              + "); copy it again, or take it out of the folder of plugins");
    }
  }

  private void add(JarLoader loader, String className) {
    Guest unknown = new Guest(loader, className);
    YardPlugin real;
    PluginInfo info;
    try {
      real =
          Class.forName(className, true, loader)
              .asSubclass(YardPlugin.class)
              .getConstructor()
              .newInstance();
    } catch (ReflectiveOperationException | RuntimeException | LinkageError e) {
      throw unknown.broken("cannot be made", e);
    }
    try {
      info = real.info();
      if (info == null) {
        throw new NullPointerException("info returned null");
      }
    } catch (RuntimeException | LinkageError e) {
      throw unknown.broken("does not say who it is", e);
    }
    Guest guest = new Guest(loader, info.id());
    Guest before = guests.put(info.id(), guest);
    if (before != null) {
      throw new PlanException(
          ProblemCode.PLUGIN_CONFLICT,
          new SourceRef(loader.jar().toString(), 0, 0),
          "the plugin "
              + info.id()
              + " is in "
              + before.jar()
              + " too; take one of the two jars away");
    }
    plugins.add(Guarded.plugin(guest, real));
  }

  /** Scripts name classes of words, and of two with one name only one could be meant. */
  private void refuseSharedWordClasses() {
    Map<String, String> seen = new HashMap<>();
    for (YardPlugin plugin : plugins) {
      for (Vocabulary vocabulary : plugin.vocabularies()) {
        for (Class<?> words : vocabulary.wordClasses()) {
          String before = seen.put(words.getName(), plugin.info().id());
          if (before != null && !before.equals(plugin.info().id())) {
            throw new PlanException(
                ProblemCode.PLUGIN_CONFLICT,
                "the plugins "
                    + before
                    + " and "
                    + plugin.info().id()
                    + " both have a class of words called "
                    + words.getName()
                    + "; load only one of them");
          }
        }
      }
    }
  }
}
