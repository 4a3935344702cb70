package yardloom.sun.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.CsvReader;
import yardloom.sun.light.LightScheme.LightClass;

/** The shipped light schemes, by name. */
public final class LightSchemes {
  private static final Map<String, LightScheme> SHIPPED = read();

  private LightSchemes() {}

  public static List<String> names() {
    return List.copyOf(SHIPPED.keySet());
  }

  /**
   * The scheme of that name.
   *
   * @throws PlanException (UNKNOWN_WORD) if there is none
   */
  public static LightScheme named(String name) {
    LightScheme found = SHIPPED.get(name);
    if (found == null) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "there is no light scheme '"
              + name
              + "'; there are "
              + String.join(", ", names())
              + "."
              + Nearest.hint(name, names()));
    }
    return found;
  }

  private static Map<String, LightScheme> read() {
    Map<String, List<LightClass>> classes = new LinkedHashMap<>();
    Map<String, Source> sources = new LinkedHashMap<>();
    for (Map<String, String> row : CsvReader.shipped(LightSchemes.class, "light-schemes.csv")) {
      classes
          .computeIfAbsent(row.get("scheme"), k -> new ArrayList<>())
          .add(
              new LightClass(
                  row.get("class"),
                  Double.parseDouble(row.get("from_hours")),
                  row.get("boundary").equals("included")));
      sources.put(row.get("scheme"), Source.commonPractice(row.get("source")));
    }
    Map<String, LightScheme> schemes = new LinkedHashMap<>();
    classes.forEach(
        (name, list) -> schemes.put(name, new LightScheme(name, list, sources.get(name))));
    return schemes;
  }
}
