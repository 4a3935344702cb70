package yardloom.kernel.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.Audience;

class PluginLoaderTest {

  private record Bare(PluginInfo info, int spiLevel) implements YardPlugin {}

  private static YardPlugin plugin(String id, int level) {
    return new Bare(new PluginInfo(id, id, "1"), level);
  }

  @Test
  void noPlugin_hintsAtServiceFiles() throws Exception {
    try (URLClassLoader empty = new URLClassLoader(new URL[0], YardPlugin.class.getClassLoader())) {
      PlanException e = assertThrows(PlanException.class, () -> PluginLoader.load(empty));
      assertTrue(e.getMessage().contains("META-INF/services"));
    }
  }

  @Test
  void plugins_areSortedById() {
    Plugins plugins = PluginLoader.of(List.of(plugin("b", Spi.LEVEL), plugin("a", Spi.LEVEL)));
    assertEquals(List.of("a", "b"), plugins.all().stream().map(p -> p.info().id()).toList());
  }

  @Test
  void newerLevel_isRefusedWithItsLevel() {
    PlanException e =
        assertThrows(
            PlanException.class, () -> PluginLoader.of(List.of(plugin("a", Spi.LEVEL + 1))));
    assertEquals(ProblemCode.PLUGIN_CONFLICT, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("level " + (Spi.LEVEL + 1)));
  }

  @Test
  void sameIdTwice_isRefused() {
    assertThrows(
        PlanException.class,
        () -> PluginLoader.of(List.of(plugin("a", Spi.LEVEL), plugin("a", Spi.LEVEL))));
  }

  /** Found by its service file. */
  public static final class Served implements YardPlugin {
    @Override
    public PluginInfo info() {
      return new PluginInfo("served", "Served", "1");
    }

    @Override
    public int spiLevel() {
      return Spi.LEVEL;
    }
  }

  @Test
  void serviceFile_namesThePlugin(@TempDir Path folder) throws Exception {
    Path services = Files.createDirectories(folder.resolve("META-INF/services"));
    Files.writeString(services.resolve(YardPlugin.class.getName()), Served.class.getName());
    try (URLClassLoader loader =
        new URLClassLoader(
            new URL[] {folder.toUri().toURL()}, PluginLoaderTest.class.getClassLoader())) {
      assertTrue(PluginLoader.find(loader).stream().anyMatch(p -> p.info().id().equals("served")));
      assertEquals(Audience.CONTRACTOR, new Served().audience());
    }
  }

  @Test
  void catalogueRow_hasATraitWithoutRegardToCase() {
    Catalogue.Row kale = new Catalogue.Row("kale", Map.of("season", "Cool, long"));
    assertTrue(kale.has("season", "cool"));
    assertFalse(kale.has("season", "warm"));
    assertFalse(kale.has("light", "cool"));
  }
}
