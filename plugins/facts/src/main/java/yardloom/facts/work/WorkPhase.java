package yardloom.facts.work;

import java.util.Locale;
import yardloom.kernel.table.SheetUse;

/**
 * The phases of the work in the trade's order. What is bought or done belongs to one of them; a
 * layer or table that offers itself for a phase stands on the crew's page of it.
 */
public enum WorkPhase implements SheetUse {
  MARK,
  STAKE,
  MOW,
  SOAK,
  EDGE,
  HEAD,
  SHEET,
  COMPOST,
  PLANT,
  DRIP,
  FINISH,
  ESTABLISH;

  /** The name that tables and files have, such as {@code stake}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
