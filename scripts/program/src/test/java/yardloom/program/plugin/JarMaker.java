package yardloom.program.plugin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** Compiles sources, and packs one of them as a plugin jar. */
public final class JarMaker {
  private JarMaker() {}

  /**
   * A jar whose service file names {@code service}; classes whose name holds {@code leftOut} are
   * missing from it.
   */
  public static Path jar(Path jar, String source, String service, String leftOut)
      throws IOException {
    Path work = Files.createTempDirectory("plugin");
    Path file = Files.writeString(work.resolve("Outside.java"), source);
    Path classes = work.resolve("classes");
    compile(List.of(file), classes);
    Files.createDirectories(jar.getParent());
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream made = new JarOutputStream(out);
        Stream<Path> all = Files.walk(classes)) {
      for (Path each : all.filter(Files::isRegularFile).sorted().toList()) {
        String name = classes.relativize(each).toString().replace('\\', '/');
        if (leftOut.isEmpty() || !name.contains(leftOut)) {
          made.putNextEntry(new JarEntry(name));
          made.write(Files.readAllBytes(each));
        }
      }
      if (!service.isEmpty()) {
        made.putNextEntry(new JarEntry("META-INF/services/yardloom.kernel.spi.YardPlugin"));
        made.write((service + "\n").getBytes(StandardCharsets.UTF_8));
      }
    }
    return jar;
  }

  /** Compiles sources against what this test sees. */
  public static void compile(List<Path> sources, Path classes) throws IOException {
    Files.createDirectories(classes);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter said = new StringWriter();
    boolean fine =
        compiler
            .getTask(
                said,
                null,
                null,
                List.of(
                    "-d",
                    classes.toString(),
                    "-parameters",
                    "-proc:none",
                    "-cp",
                    System.getProperty("java.class.path")),
                null,
                compiler
                    .getStandardFileManager(null, null, StandardCharsets.UTF_8)
                    .getJavaFileObjectsFromPaths(sources))
            .call();
    assertTrue(fine, said.toString());
  }
}
