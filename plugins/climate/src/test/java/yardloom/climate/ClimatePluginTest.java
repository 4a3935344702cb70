package yardloom.climate;

import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;

class ClimatePluginTest extends PluginContract {
  @Override
  protected YardPlugin plugin() {
    return new ClimatePlugin();
  }
}
