package yardloom.kernel.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

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
}
