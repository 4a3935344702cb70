package yardloom.kernel.spi;

/**
 * Who a plugin is.
 *
 * @param id lower-case name, unique among the loaded plugins
 */
public record PluginInfo(String id, String title, String version) {
  public PluginInfo {
    if (!id.matches("[a-z][a-z0-9.-]*")) {
      throw new IllegalArgumentException("plugin id \"" + id + "\"");
    }
  }
}
