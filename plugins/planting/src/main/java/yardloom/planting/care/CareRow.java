package yardloom.planting.care;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.vocab.Choices;

/**
 * A row of {@code care-acts.csv}.
 *
 * @param who the group of plants, or the part of the yard, that it is done for
 * @param where in which climates it is done
 * @param from first day, in days from a frost
 * @param first the first season of the plants' own in which it is done
 * @param last the last one; for good if absent
 * @param every how many seasons apart
 * @param minutes for one of {@code per}
 */
record CareRow(
    Act act,
    String what,
    String who,
    Where where,
    Offset from,
    Offset until,
    int first,
    OptionalInt last,
    int every,
    double minutes,
    Per per,
    String how,
    Source source) {
  private static final SourceTable SOURCES = SourceTable.beside(CareRow.class);

  /** All shipped rows, in their order. */
  static final List<CareRow> SHIPPED = read();

  /**
   * Days after a frost, before it if negative.
   *
   * @param next whether it is a frost of the season after
   */
  record Offset(boolean afterLast, int days, boolean next) {}

  /** Climates. */
  enum Where {
    ALWAYS,
    /** Where frost is usual; of plants only those that the cold of a usual winter harms. */
    FROST,
    /** Where winters freeze the ground. */
    FROZEN
  }

  /** What the minutes are for. */
  enum Per {
    PLANT,
    HUNDRED_SQUARE_FEET,
    HUNDRED_SQUARE_FEET_A_WEEK,
    YARD
  }

  /** Whether it is done in a season of the plants' own, counted from 1. */
  boolean isDue(int season) {
    return season >= first
        && season <= last.orElse(Integer.MAX_VALUE)
        && (season - first) % every == 0;
  }

  static SourceTable sources() {
    return SOURCES;
  }

  private static List<CareRow> read() {
    List<CareRow> rows = new ArrayList<>();
    for (DataRow row : DataTable.shipped(CareRow.class, "care-acts.csv").rows()) {
      rows.add(
          new CareRow(
              Choices.parse(Act.class, row.text("act")),
              row.text("what"),
              row.text("who"),
              Choices.parse(Where.class, row.text("where")),
              offset(row, "from"),
              offset(row, "until"),
              (int) row.number("first"),
              last(row),
              (int) row.number("every"),
              row.number("minutes"),
              per(row.text("per")),
              row.text("how"),
              SOURCES.cited(row, "source")));
    }
    return List.copyOf(rows);
  }

  private static OptionalInt last(DataRow row) {
    return row.text("last").isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of((int) row.number("last"));
  }

  private static Offset offset(DataRow row, String end) {
    String frost = row.text(end + "_frost");
    return new Offset(
        frost.endsWith("last"), (int) row.number(end + "_days"), frost.startsWith("next "));
  }

  private static Per per(String text) {
    return switch (text) {
      case "plant" -> Per.PLANT;
      case "100 sq ft" -> Per.HUNDRED_SQUARE_FEET;
      case "100 sq ft a week" -> Per.HUNDRED_SQUARE_FEET_A_WEEK;
      case "yard" -> Per.YARD;
      default -> throw new IllegalStateException("care-acts.csv has minutes per \"" + text + "\"");
    };
  }
}
