package yardloom.program.output;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.fact.Appendix;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/**
 * The derived numbers of all tables, numbered as the calculation appendix prints them. Not
 * thread-safe.
 */
public final class Calculations {
  private final TableFormat format;
  private final ValueText values;
  private final Appendix appendix;
  private final List<Printed> printed = new ArrayList<>();
  private final Map<Integer, Derived<?>> byNumber = new TreeMap<>();
  private final Map<Derived<?>, Integer> numbers = new IdentityHashMap<>();

  /**
   * A derived number of a table.
   *
   * @param row counts from 0
   * @param column counts from 0
   * @param name row and column as the appendix calls them
   * @param value as the appendix prints it
   * @param number of its calculation, from 1
   */
  public record Printed(Table table, int row, int column, String name, String value, int number) {}

  private Calculations(TableFormat format) {
    this.format = format;
    this.values = new ValueText(format);
    this.appendix = new Appendix(values::of);
  }

  /** The derived numbers of {@code outcome}, table by table. */
  public static Calculations of(Outcome outcome, TableFormat format) {
    Calculations all = new Calculations(format);
    WaterVolumes.of(outcome.tables()).forEach(all.values::isWater);
    outcome.tables().forEach(all::add);
    return all;
  }

  private void add(Table table) {
    for (int r = 0; r < table.rows().size(); r++) {
      List<Cell> row = table.rows().get(r);
      for (int c = 0; c < row.size(); c++) {
        Optional<Derived<?>> why = row.get(c).why();
        if (why.isPresent()) {
          add(table, r, c, why.get());
        }
      }
    }
  }

  private void add(Table table, int r, int c, Derived<?> why) {
    List<Cell> row = table.rows().get(r);
    Column column = table.columns().get(c);
    String about = format.text(table.columns().get(0), row.get(0));
    String name = c == 0 ? about : about + ", " + column.title();
    String value = values.inTable(column, row.get(c), why.value());
    printed.add(new Printed(table, r, c, name, value, appendix.add(name, why)));
    remember(name, why);
  }

  /** What was added already gets the number it has. */
  private void remember(String name, Derived<?> why) {
    if (!numbers.containsKey(why)) {
      int number = appendix.add(name, why);
      numbers.put(why, number);
      byNumber.putIfAbsent(number, why);
      for (Derived.Input input : why.inputs()) {
        if (input.value() instanceof Derived<?> inner) {
          remember(input.name(), inner);
        }
      }
    }
  }

  /** The derived cells in the order of their tables. */
  public List<Printed> printed() {
    return Collections.unmodifiableList(printed);
  }

  /** The calculations by number. */
  public List<Appendix.Entry> entries() {
    return appendix.entries();
  }

  /** The sources; the first has number 1. */
  public List<String> sources() {
    return appendix.sources();
  }

  /** The derivation with that number; empty if there is none. */
  public Optional<Derived<?>> derived(int number) {
    return Optional.ofNullable(byNumber.get(number));
  }

  /** The number of a derivation that some table rests on. */
  public int number(Derived<?> derived) {
    return numbers.get(derived);
  }

  /** How values are written. */
  public ValueText values() {
    return values;
  }
}
