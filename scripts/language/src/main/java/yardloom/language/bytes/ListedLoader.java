package yardloom.language.bytes;

import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Shows the listed classes and those of the script, and nothing else; it has no resources. */
public final class ListedLoader extends ClassLoader {
  /**
   * What the machine itself needs to speed up Groovy's calls of closures; the class gate lets no
   * script name them.
   */
  private static final Set<String> MACHINE =
      Set.of(
          "jdk.internal.reflect.MethodAccessorImpl",
          "jdk.internal.reflect.ConstructorAccessorImpl",
          "java.lang.reflect.InvocationTargetException",
          "java.lang.IllegalArgumentException",
          "java.lang.NullPointerException",
          "java.lang.ClassCastException",
          "java.lang.Throwable");

  private final Map<String, Class<?>> listed;
  private final Map<String, byte[]> own = new HashMap<>();

  public ListedLoader(Map<String, Class<?>> listed) {
    super("plan script", null);
    this.listed = Map.copyOf(listed);
  }

  /** Adds classes of the script that have passed the class gate. */
  public void add(Map<String, byte[]> classes) {
    own.putAll(classes);
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = listed.get(name);
      if (known != null) {
        return known;
      }
      Class<?> loaded = findLoadedClass(name);
      if (loaded != null) {
        return loaded;
      }
      if (MACHINE.contains(name)) {
        return Class.forName(name, false, null);
      }
      byte[] bytes = own.get(name);
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }

  @Override
  public URL getResource(String name) {
    return null;
  }

  @Override
  public Enumeration<URL> getResources(String name) {
    return Collections.emptyEnumeration();
  }

  @Override
  public InputStream getResourceAsStream(String name) {
    return null;
  }
}
