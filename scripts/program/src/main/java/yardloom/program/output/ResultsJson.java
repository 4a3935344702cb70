package yardloom.program.output;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.TreeMap;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.vocab.Choices;

/**
 * The outcome as JSON for other programs: SI values, and beside them what the tables show.
 *
 * <p>The form is described by {@code results.schema.json}; {@link #VERSION} grows when a reader of
 * the old form would misread the new one.
 */
public final class ResultsJson {
  /** The version of the form. */
  public static final int VERSION = 1;

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private static final ObjectWriter WRITER =
      new ObjectMapper()
          .configure(SerializationFeature.CLOSE_CLOSEABLE, false)
          .writer(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));

  private ResultsJson() {}

  /** What is loaded with this class takes as long as writing does. */
  static void loadAhead() {
    WRITER.getFactory();
  }

  public static void write(Outcome outcome, TableFormat format, OutputStream out)
      throws IOException {
    WRITER.writeValue(out, tree(outcome, format));
  }

  /** The outcome as a tree. */
  public static ObjectNode tree(Outcome outcome, TableFormat format) {
    ObjectNode root = JSON.objectNode();
    root.put("version", VERSION);
    root.set("plan", plan(outcome.plan()));
    ArrayNode elements = root.putArray("elements");
    outcome.plan().elements().forEach(e -> elements.add(element(e)));
    ArrayNode tables = root.putArray("tables");
    outcome.tables().forEach(t -> tables.add(table(t, format)));
    ArrayNode findings = root.putArray("findings");
    outcome.findings().forEach(f -> findings.add(finding(f)));
    ArrayNode cautions = root.putArray("cautions");
    outcome
        .cautions()
        .forEach(c -> cautions.addObject().put("text", c.text()).put("source", c.source().cite()));
    ObjectNode skipped = root.putObject("skipped");
    new TreeMap<>(outcome.results().skipped()).forEach(skipped::put);
    return root;
  }

  private static ObjectNode plan(Plan plan) {
    ObjectNode node = JSON.objectNode();
    node.put("id", plan.info().id());
    node.put("title", plan.info().title());
    node.put("client", plan.info().client());
    node.put("author", plan.info().author());
    node.put("date", plan.info().date());
    node.put("revision", plan.info().revision());
    plan.info().revised().ifPresent(on -> node.put("revisionDate", on.toString()));
    node.put("units", Choices.text(plan.info().units()));
    node.put("currency", plan.info().currency());
    ObjectNode parameters = node.putObject("parameters");
    plan.parameters().forEach(parameters::put);
    plan.lot()
        .map(Lot::shape)
        .ifPresent(
            lot -> node.put("lotAreaM2", lot.area().squareMetres()).put("lotWkt", lot.toString()));
    plan.site()
        .ifPresent(
            s ->
                node.putObject("site")
                    .put("name", s.name())
                    .put("latitudeDeg", s.latitude().degrees())
                    .put("longitudeDeg", s.longitude().degrees())
                    .put("zone", s.zone().getId()));
    return node;
  }

  private static ObjectNode element(Element element) {
    ObjectNode node =
        JSON.objectNode()
            .put("kind", element.id().kind().word())
            .put("name", element.id().name())
            .put("place", element.place().toString())
            .put("areaM2", element.shape().area().squareMetres())
            .put("outlineWkt", element.shape().isEmpty() ? "" : element.shape().toString());
    if (element instanceof Element.WaterPoint point) {
      // It covers no ground; without this nobody could say where it is.
      node.putArray("atM").add(point.at().x().metres()).add(point.at().y().metres());
    }
    return node;
  }

  private static ObjectNode table(Table table, TableFormat format) {
    ObjectNode node = JSON.objectNode();
    node.put("id", table.id()).put("title", table.title());
    ArrayNode columns = node.putArray("columns");
    table
        .columns()
        .forEach(c -> columns.addObject().put("id", c.id()).put("title", format.header(c)));
    ArrayNode rows = node.putArray("rows");
    for (var row : table.rows()) {
      ObjectNode cells = rows.addObject();
      for (int i = 0; i < row.size(); i++) {
        cells.set(table.columns().get(i).id(), cell(table, i, row.get(i), format));
      }
    }
    ArrayNode notes = node.putArray("notes");
    table.notes().forEach(notes::add);
    return node;
  }

  private static ObjectNode cell(Table table, int column, Cell cell, TableFormat format) {
    ObjectNode node = JSON.objectNode();
    node.put("shown", format.text(table.columns().get(column), cell));
    cell.value()
        .ifPresent(
            v -> {
              if (v instanceof Quantity<?> q) {
                node.put("si", q.si());
              } else if (v instanceof Number n) {
                node.put("number", n.doubleValue());
              } else if (v instanceof LocalDate || v instanceof MonthDay) {
                node.put("iso", v.toString());
              }
            });
    cell.why().ifPresent(d -> why(node, d));
    return node;
  }

  private static void why(ObjectNode node, Derived<?> derived) {
    node.put("formula", derived.formula());
    node.put("source", derived.source().cite());
  }

  private static ObjectNode finding(Finding f) {
    ObjectNode node = JSON.objectNode();
    node.put("rule", f.rule());
    node.put("severity", Choices.text(f.severity()));
    f.element().ifPresent(id -> node.put("element", id.toString()));
    node.put("place", f.place().toString());
    if (f.place().calledFrom() > 0) {
      node.put("calledFrom", f.place().calledFrom());
    }
    node.put("text", f.text());
    node.put("advice", f.advice());
    node.put("source", f.source().cite());
    return node;
  }
}
