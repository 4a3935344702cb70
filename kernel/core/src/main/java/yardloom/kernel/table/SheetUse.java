package yardloom.kernel.table;

import java.util.Locale;

/**
 * What a sheet or one page of it is for, such as the crew's page of a phase.
 *
 * <p>Layers and tables offer themselves for uses; a sheet takes what is offered for its own, and so
 * knows neither their names nor their plugins. An enum beside the shared facts implements it.
 */
public interface SheetUse {
  /** Its name, unique in its enum. */
  String name();

  /** The id of the sheet that is for this use alone, if the set has one. */
  default String sheetId() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
