package yardloom.soil;

import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;

class SoilContractTest extends PluginContract {
  @Override
  protected YardPlugin plugin() {
    return new SoilPlugin();
  }
}
