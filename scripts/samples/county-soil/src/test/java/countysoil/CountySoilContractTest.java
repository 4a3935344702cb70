package countysoil;

import yardloom.kernel.spi.PluginContract;
import yardloom.kernel.spi.YardPlugin;

/** What every plugin must do: help for every value, one id each, the same outcome twice. */
class CountySoilContractTest extends PluginContract {
  @Override
  protected YardPlugin plugin() {
    return new CountySoilPlugin();
  }
}
