package yardloom.program.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The public signatures that plugins compile against, as text. A change here needs a line in the
 * change log and, unless it only adds, a new {@code Spi.LEVEL}.
 */
class SpiSnapshotTest {
  private static final Path SNAPSHOT =
      Path.of("src/test/resources/yardloom/program/architecture/spi-level-1.txt");
  private static final String[] PACKAGES = {
    "yardloom.kernel.spi",
    "yardloom.kernel.vocab",
    "yardloom.kernel.fact",
    "yardloom.kernel.check",
    "yardloom.kernel.draw",
    "yardloom.kernel.table"
  };

  @Test
  void signatures_unchanged_orRegeneratedOnPurpose() throws IOException {
    String now = signatures();
    if (Boolean.getBoolean("updateGolden")) {
      Files.createDirectories(SNAPSHOT.getParent());
      Files.writeString(SNAPSHOT, now);
    }
    assertEquals(
        Files.readString(SNAPSHOT, StandardCharsets.UTF_8),
        now,
        "the plugin interface changed: write it in the change log, think about Spi.LEVEL, then run"
            + " with -DupdateGolden=true");
  }

  private static String signatures() {
    TreeSet<String> lines = new TreeSet<>();
    for (JavaClass type :
        new ClassFileImporter().withImportOption(new NoTests()).importPackages(PACKAGES)) {
      if (!type.getModifiers().contains(JavaModifier.PUBLIC)) {
        continue;
      }
      lines.add(type.getName());
      type.getMembers().stream()
          .filter(m -> m.getModifiers().contains(JavaModifier.PUBLIC))
          .filter(m -> !m.getModifiers().contains(JavaModifier.SYNTHETIC))
          .map(JavaMember::getDescription)
          .map(d -> d.replaceAll("^[A-Za-z ]+ <(.*)>$", "$1"))
          .forEach(d -> lines.add("  " + type.getSimpleName() + " " + d));
    }
    return String.join("\n", lines) + "\n";
  }
}
