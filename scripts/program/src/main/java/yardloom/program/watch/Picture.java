package yardloom.program.watch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.check.Finding;
import yardloom.kernel.plan.Element;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.program.explain.Directory;
import yardloom.program.explain.ScriptLines;

/** What the page shows of a plan, as JSON. */
final class Picture {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");

  private Picture() {}

  /** The tables, findings, parameters and elements of a plan. */
  static ObjectNode of(Outcome outcome, ScriptLines lines) {
    ObjectNode page = JSON.createObjectNode();
    page.put("title", outcome.plan().info().title());
    page.put("units", outcome.plan().info().units().name());
    tables(page.putArray("tables"), outcome);
    findings(page.putArray("findings"), outcome.findings());
    ArrayNode parameters = page.putArray("parameters");
    outcome
        .plan()
        .parameters()
        .forEach(
            (name, value) ->
                parameters.addObject().put("name", name).put("value", inPlanUnits(value, outcome)));
    ArrayNode elements = page.putArray("elements");
    for (Element element : outcome.plan().elements()) {
      elements
          .addObject()
          .put("id", element.id().toString())
          .put("name", element.id().name())
          .put("place", place(element.place()))
          .put("line", lines.at(element.place()).orElse(""));
    }
    return page;
  }

  /** The problems of a plan that cannot be drawn, with their script lines. */
  static ArrayNode problems(List<Problem> problems, ScriptLines lines) {
    ArrayNode all = JSON.createArrayNode();
    for (Problem problem : problems) {
      all.addObject()
          .put("place", place(problem.place()))
          .put("text", problem.message())
          .put("line", lines.at(problem.place()).orElse(""));
    }
    return all;
  }

  static byte[] bytes(ObjectNode node) {
    try {
      return JSON.writeValueAsBytes(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of texts and numbers can be written", e);
    }
  }

  static ObjectNode node() {
    return JSON.createObjectNode();
  }

  /** Lengths in feet where the plan speaks in feet; all else as the plan keeps it. */
  private static String inPlanUnits(String value, Outcome outcome) {
    boolean metres = value.matches("-?[0-9]+(\\.[0-9]+)? m");
    if (!metres || outcome.plan().info().units() != UnitSystem.US) {
      return value;
    }
    BigDecimal feet =
        new BigDecimal(value.substring(0, value.length() - 2))
            .divide(METRES_PER_FOOT, 3, RoundingMode.HALF_UP);
    return feet.stripTrailingZeros().toPlainString() + " ft";
  }

  private static String place(SourceRef place) {
    return place.line() < 1 ? place.file() : place.file() + ":" + place.line();
  }

  private static void tables(ArrayNode all, Outcome outcome) {
    TableFormat format = TableFormat.of(outcome.plan().info());
    for (Table table : outcome.tables()) {
      ObjectNode node = all.addObject().put("id", table.id()).put("title", table.title());
      ArrayNode head = node.putArray("head");
      table.columns().forEach(c -> head.add(format.header(c)));
      ArrayNode numbers = node.putArray("numbers");
      table.columns().forEach(c -> numbers.add(c.measure().isNumber()));
      ArrayNode names = node.putArray("names");
      Directory.rowNames(table, format).forEach(names::add);
      ArrayNode rows = node.putArray("rows");
      for (List<Cell> row : table.rows()) {
        ArrayNode cells = rows.addArray();
        for (int i = 0; i < row.size(); i++) {
          Column column = table.columns().get(i);
          cells.add(format.text(column, row.get(i)));
        }
      }
      ArrayNode notes = node.putArray("notes");
      table.notes().forEach(notes::add);
    }
  }

  private static void findings(ArrayNode all, List<Finding> findings) {
    for (Finding finding : findings) {
      all.addObject()
          .put("severity", finding.severity().name().toLowerCase(Locale.ROOT))
          .put("element", finding.element().map(Object::toString).orElse(""))
          .put("text", finding.text())
          .put("advice", finding.advice())
          .put("place", place(finding.place()));
    }
  }
}
