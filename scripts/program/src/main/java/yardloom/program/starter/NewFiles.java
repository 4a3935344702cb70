package yardloom.program.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The files of a plugin or a regional file to begin with, by path; the same name gives the same.
 */
public final class NewFiles {
  private NewFiles() {}

  /**
   * A Maven project of a plugin.
   *
   * @param id lower-case letters and digits, parts joined by hyphens
   * @param version of the kernel it is built against
   */
  public static Map<String, String> plugin(String id, String version) {
    String type = camel(id);
    String code = id.replace("-", "");
    Map<String, String> names =
        Map.of(
            "@id@", id,
            "@title@", title(id),
            "@version@", version,
            "@package@", code,
            "@Class@", type,
            "@rule@", code.replaceAll("[^a-z]", ""),
            "@word@", type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1) + "Well");
    String main = "src/main/java/" + code + "/";
    Map<String, String> files = new TreeMap<>();
    files.put("pom.xml", filled("plugin/pom.xml.txt", names));
    files.put("README.md", filled("plugin/README.md.txt", names));
    files.put("example.groovy", filled("plugin/example.groovy.txt", names));
    files.put(main + type + "Plugin.java", filled("plugin/Plugin.java.txt", names));
    files.put(main + type + "Words.java", filled("plugin/Words.java.txt", names));
    files.put(main + "WellCheck.java", filled("plugin/WellCheck.java.txt", names));
    files.put(main + "WellTable.java", filled("plugin/WellTable.java.txt", names));
    files.put(
        "src/test/java/" + code + "/" + type + "PluginTest.java",
        filled("plugin/PluginTest.java.txt", names));
    files.put(
        "src/test/java/" + code + "/" + type + "ContractTest.java",
        filled("plugin/ContractTest.java.txt", names));
    files.put(
        "src/main/resources/META-INF/services/yardloom.kernel.spi.YardPlugin",
        code + "." + type + "Plugin\n");
    return files;
  }

  /** A regional file. */
  public static String regional(String id) {
    return filled("regional.txt", Map.of("@id@", id, "@title@", title(id)));
  }

  private static String camel(String id) {
    StringBuilder name = new StringBuilder();
    for (String part : id.split("-")) {
      name.append(part.substring(0, 1).toUpperCase(Locale.ROOT)).append(part.substring(1));
    }
    return name.toString();
  }

  /** The name of a file as a title: hyphens and underscores are spaces, the first letter large. */
  public static String title(String name) {
    String words = name.replaceAll("[-_]+", " ").strip();
    int end = words.offsetByCodePoints(0, 1);
    return words.substring(0, end).toUpperCase(Locale.ROOT) + words.substring(end);
  }

  private static String filled(String resource, Map<String, String> names) {
    String text = template(resource);
    for (var name : names.entrySet()) {
      text = text.replace(name.getKey(), name.getValue());
    }
    return text;
  }

  /** A file to begin with as it lies in the program. */
  static String template(String resource) {
    try (InputStream in = NewFiles.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the starter " + resource + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
