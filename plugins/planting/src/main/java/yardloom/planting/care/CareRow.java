package yardloom.planting.care;

import java.util.ArrayList;
import java.util.Arrays;
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
 * @param remains what it leaves to rot
 */
record CareRow(CareTask task, String who, Where where, When when, Pace pace, Remains remains) {
  private static final SourceTable SOURCES = SourceTable.beside(CareRow.class);

  /** All shipped rows, in their order. */
  static final List<CareRow> SHIPPED = read();

  /**
   * Its days and seasons.
   *
   * @param from first day
   * @param first the first season of the plants' own in which it is done
   * @param last the last one; for good if absent
   * @param every how many seasons apart
   */
  record When(Offset from, Offset until, int first, OptionalInt last, int every) {
    /** Whether it is done in a season of the plants' own, counted from 1. */
    boolean isDue(int season) {
      return season >= first
          && season <= last.orElse(Integer.MAX_VALUE)
          && (season - first) % every == 0;
    }
  }

  /**
   * How long it takes.
   *
   * @param minutes for one of {@code per}
   */
  record Pace(double minutes, Per per, Source source) {}

  /**
   * Days after a day of the season, before it if negative.
   *
   * @param next whether it is a day of the season after
   */
  record Offset(From from, int days, boolean next) {}

  /** What days are counted from. */
  enum From {
    /** The last frost of spring. */
    LAST,
    /** The first frost of fall. */
    FIRST,
    /** The last day on which a kind is picked. */
    PICKED,
    /** The first frost of fall, or the last day on which a kind is picked if that is later. */
    FIRST_OR_PICKED
  }

  /** Climates. */
  enum Where {
    ALWAYS,
    /** Where frost is usual; of plants only those that the cold of a usual winter harms. */
    FROST,
    /** Where frost is usual, and only what the cold of a usual winter harms while it is young. */
    YOUNG,
    /** Where winters freeze the ground. */
    FROZEN,
    /** Where they do not: what grows, grows on. */
    OPEN
  }

  /** What an act leaves over. */
  enum Remains {
    NOTHING,
    /** Moist and rich in nitrogen. */
    GREEN,
    /** Dry and rich in carbon, thinner than a pencil. */
    BROWN,
    /** Too thick for a heap. */
    WOODY
  }

  /** What the minutes are for. */
  enum Per {
    PLANT("plant"),
    PLANT_A_MONTH("plant a month"),
    HUNDRED_SQUARE_FEET("100 sq ft"),
    HUNDRED_SQUARE_FEET_A_WEEK("100 sq ft a week"),
    TEN_FEET("10 ft"),
    /** Of chips that are added. */
    CUBIC_YARD("cu yd"),
    YARD("yard"),
    YARD_A_MONTH("yard a month");

    private final String text;

    Per(String text) {
      this.text = text;
    }

    boolean isForPlants() {
      return this == PLANT || this == PLANT_A_MONTH;
    }
  }

  static SourceTable sources() {
    return SOURCES;
  }

  private static List<CareRow> read() {
    List<CareRow> rows = new ArrayList<>();
    for (DataRow row : DataTable.shipped(CareRow.class, "care-acts.csv").rows()) {
      rows.add(
          new CareRow(
              task(row),
              row.text("who"),
              Choices.parse(Where.class, row.text("where")),
              when(row),
              new Pace(row.number("minutes"), per(row.text("per")), SOURCES.cited(row, "pace")),
              remains(row.text("remains"))));
    }
    return List.copyOf(rows);
  }

  private static CareTask task(DataRow row) {
    return new CareTask(
        Choices.parse(Act.class, row.text("act")),
        row.text("what"),
        row.text("how"),
        SOURCES.cited(row, "source"));
  }

  private static When when(DataRow row) {
    return new When(
        offset(row, "from"),
        offset(row, "until"),
        (int) row.number("first"),
        last(row),
        (int) row.number("every"));
  }

  private static OptionalInt last(DataRow row) {
    return row.text("last").isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of((int) row.number("last"));
  }

  private static Offset offset(DataRow row, String end) {
    String day = row.text(end + "_frost");
    boolean next = day.startsWith("next ");
    From from = Choices.parse(From.class, next ? day.substring("next ".length()) : day);
    return new Offset(from, (int) row.number(end + "_days"), next);
  }

  private static Remains remains(String text) {
    return text.isEmpty() ? Remains.NOTHING : Choices.parse(Remains.class, text);
  }

  /** What an act of a name leaves over. */
  static Remains remainsOf(String what) {
    return SHIPPED.stream()
        .filter(r -> r.task().what().equals(what))
        .map(CareRow::remains)
        .findFirst()
        .orElse(Remains.NOTHING);
  }

  private static Per per(String text) {
    return Arrays.stream(Per.values())
        .filter(p -> p.text.equals(text))
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("care-acts.csv has minutes per \"" + text + "\""));
  }
}
