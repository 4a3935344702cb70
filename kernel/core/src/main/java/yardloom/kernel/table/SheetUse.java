package yardloom.kernel.table;

/**
 * What a sheet or one page of it is for, such as the crew's page of a phase.
 *
 * <p>Layers and tables offer themselves for uses; a sheet takes what is offered for its own, and so
 * knows neither their names nor their plugins. An enum beside the shared facts implements it.
 */
public interface SheetUse {
  /** Its name, unique in its enum. */
  String name();
}
