package yardloom.program.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Unit;

/** Lists that are no words: units, sheets, layers, tables, rules, built-in words. */
public final class Lists {
  private static final Map<String, Function<Plugins, List<String>>> ALL = new TreeMap<>();

  static {
    ALL.put("units", plugins -> units());
    ALL.put("sheets", plugins -> offered(plugins, YardPlugin::sheets, SheetMaker::id));
    ALL.put("layers", plugins -> offered(plugins, YardPlugin::painters, p -> p.layer().id()));
    ALL.put("tables", plugins -> offered(plugins, YardPlugin::tables, TableMaker::id));
    ALL.put("rules", plugins -> offered(plugins, YardPlugin::checks, Check::id));
    ALL.put("builtins", plugins -> builtIns());
  }

  private Lists() {}

  /** The names of all lists, sorted. */
  public static List<String> names() {
    return List.copyOf(ALL.keySet());
  }

  /** The lines of the list called {@code name}, if there is one. */
  public static Optional<List<String>> of(String name, Plugins plugins) {
    return Optional.ofNullable(ALL.get(name)).map(make -> make.apply(plugins));
  }

  private static List<String> units() {
    List<String> lines = new ArrayList<>();
    for (Dimension dimension : Dimension.values()) {
      lines.add(dimension.word() + ", such as " + dimension.example() + ":");
      Unit.of(dimension).stream()
          .sorted(Comparator.comparing(Unit::word))
          .forEach(
              u ->
                  lines.add(
                      String.format("  %-8s %-8s", u.word(), u.symbol())
                          + (u.also().isEmpty() ? "" : " also " + String.join(", ", u.also()))));
    }
    lines.replaceAll(String::stripTrailing);
    return lines;
  }

  private static List<String> builtIns() {
    List<String> lines = new ArrayList<>();
    for (BuiltIn word : BuiltIn.ALL) {
      lines.add(word.signature());
      lines.add("  " + word.help());
      lines.add("  example: " + word.example());
    }
    return lines;
  }

  private static <T> List<String> offered(
      Plugins plugins, Function<YardPlugin, List<T>> offers, Function<T, String> id) {
    return plugins.each(offers).map(o -> "  " + id.apply(o)).sorted().toList();
  }
}
