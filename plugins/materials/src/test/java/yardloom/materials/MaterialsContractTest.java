package yardloom.materials;

import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;

class MaterialsContractTest extends PluginContract {
  @Override
  protected YardPlugin plugin() {
    return new MaterialsPlugin();
  }
}
