package yardloom.program.plugin;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;

/** The class loader of one jar: the program's classes first, then the jar's own, nobody else's. */
final class JarLoader extends URLClassLoader {
  private final Path jar;

  JarLoader(Path jar, URL url, ClassLoader program) {
    super("plugin " + jar.getFileName(), new URL[] {url}, program);
    this.jar = jar;
  }

  Path jar() {
    return jar;
  }

  /** Whether the class of this name came from the jar. */
  boolean defined(String className) {
    synchronized (getClassLoadingLock(className)) {
      return findLoadedClass(className) != null;
    }
  }
}
