package yardloom.kernel.table;

/** Who needs a table first; the report puts the tables of one reader together, in this order. */
public enum Audience {
  /** Whoever pays and decides: what the yard brings and costs. */
  CLIENT("For the client"),
  /** Whoever lives with the yard: what to do, when, and what to pick. */
  HOUSEHOLD("For the household"),
  /** Whoever builds: areas, amounts, orders, hours, setting out. */
  CONTRACTOR("For the contractor"),
  /** Whoever grows or plants what is ordered. */
  NURSERY("For the nursery and planters"),
  /** Whoever lays pipes and lines. */
  INSTALLER("For the irrigation installer");

  private final String title;

  Audience(String title) {
    this.title = title;
  }

  /** The heading over its tables. */
  public String title() {
    return title;
  }
}
