package yardloom.work;

import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;

class WorkContractTest extends PluginContract {
  @Override
  protected YardPlugin plugin() {
    return new WorkPlugin();
  }
}
