package yardloom.program.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.CsvReader;

/**
 * Reads lists of lots.
 *
 * <p>A CSV has a header of parameter names; its column {@code lot} names the lots, and a blank cell
 * leaves the plan's own value. Of a GeoJSON each feature is a lot: its polygon is the value of the
 * parameter {@code lot}, its middle that of {@code latitude} and {@code longitude}, its properties
 * those of the parameters of their names; a property {@code name} names it.
 */
public final class LotList {
  private static final String LOT = "lot";

  private final String file;
  private final Set<String> parameters;
  private final List<LotRow> lots = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  private LotList(String file, Set<String> parameters) {
    this.file = file;
    this.parameters = parameters;
  }

  /**
   * The lots of a file in its order.
   *
   * @param parameters the names of the plan's parameters
   * @throws PlanException (SYNTAX, UNKNOWN_WORD, DUPLICATE) if the list as a whole cannot be read
   */
  public static List<LotRow> read(String file, String text, Set<String> parameters) {
    LotList list = new LotList(file, parameters);
    String lower = file.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".geojson") || lower.endsWith(".json")) {
      list.geoJson(text);
    } else {
      list.csv(text);
    }
    if (list.lots.isEmpty()) {
      throw list.wrong(ProblemCode.SYNTAX, 0, "there is no lot in the list");
    }
    return List.copyOf(list.lots);
  }

  private PlanException wrong(ProblemCode code, int line, String message) {
    return new PlanException(code, new SourceRef(file, line, 0), message);
  }

  private void csv(String text) {
    List<CsvReader.Row> rows;
    try {
      rows = CsvReader.read(text, "the list of lots");
    } catch (PlanException e) {
      throw e.at(new SourceRef(file, 0, 0));
    }
    if (rows.isEmpty()) {
      return;
    }
    List<String> header = rows.get(0).texts();
    for (String name : header) {
      if (!name.equals(LOT) && !parameters.contains(name)) {
        throw wrong(
            ProblemCode.UNKNOWN_WORD,
            rows.get(0).line(),
            "the plan has no parameter `"
                + name
                + "`."
                + Nearest.hint(name, parameters)
                + " Columns are parameters, and `lot` for the names");
      }
    }
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      if (row.fields().size() > header.size()) {
        throw wrong(ProblemCode.SYNTAX, row.line(), "the row has more cells than the header");
      }
      Map<String, String> settings = new TreeMap<>();
      String name = "";
      for (int i = 0; i < row.fields().size(); i++) {
        String cell = row.texts().get(i);
        if (header.get(i).equals(LOT)) {
          name = cell;
        } else if (!cell.isEmpty()) {
          settings.put(header.get(i), cell);
        }
      }
      add(name, settings, row.line());
    }
  }

  private void geoJson(String text) {
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw wrong(ProblemCode.SYNTAX, e.getLocation().getLineNr(), "this is no well-formed JSON");
    }
    if (!parameters.contains(LOT)) {
      throw wrong(
          ProblemCode.UNKNOWN_WORD,
          0,
          "the plan has no parameter `lot` that could take the outline of each; write in it"
              + " lotOutline(geoOutline(param('lot', fileText('first.geojson'), 'outline')))");
    }
    for (JsonNode feature : root.path("features")) {
      Map<String, String> settings = new TreeMap<>();
      JsonNode properties = feature.path("properties");
      properties
          .fields()
          .forEachRemaining(
              p -> {
                if (parameters.contains(p.getKey()) && p.getValue().isValueNode()) {
                  settings.put(p.getKey(), p.getValue().asText());
                }
              });
      middle(feature.path("geometry").path("coordinates").path(0), settings);
      ObjectNode alone = new ObjectMapper().createObjectNode().put("type", "Feature");
      alone.putObject("properties");
      alone.set("geometry", feature.path("geometry"));
      if (root.has("crs")) {
        alone.set("crs", root.get("crs"));
      }
      settings.put(LOT, alone.toString());
      add(properties.path("name").asText(feature.path("id").asText("")), settings, 0);
    }
  }

  private void middle(JsonNode ring, Map<String, String> settings) {
    double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] most = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (JsonNode corner : ring) {
      for (int i = 0; i < 2; i++) {
        least[i] = Math.min(least[i], corner.path(i).asDouble());
        most[i] = Math.max(most[i], corner.path(i).asDouble());
      }
    }
    String[] axes = {"longitude", "latitude"};
    for (int i = 0; i < 2; i++) {
      if (parameters.contains(axes[i]) && least[i] <= most[i]) {
        settings.putIfAbsent(
            axes[i], String.format(Locale.ROOT, "%.5fdeg", (least[i] + most[i]) / 2));
      }
    }
  }

  private void add(String name, Map<String, String> settings, int line) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String unique = plain.isEmpty() ? "lot-" + (lots.size() + 1) : plain;
    if (!names.add(unique)) {
      throw wrong(
          ProblemCode.DUPLICATE,
          line,
          "two lots would be written to the folder " + unique + "; give each another name");
    }
    lots.add(new LotRow(unique, settings));
  }
}
