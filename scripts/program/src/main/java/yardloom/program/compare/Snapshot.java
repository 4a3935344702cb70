package yardloom.program.compare;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Choices;
import yardloom.program.output.ResultsJson;

/** A plan as {@code results.json} has it, as far as plans are compared. */
public record Snapshot(
    PlanInfo info,
    Optional<Shape> lot,
    List<Thing> things,
    List<ResultGrid> tables,
    List<Remark> findings) {
  public Snapshot {
    things = List.copyOf(things);
    tables = List.copyOf(tables);
    findings = List.copyOf(findings);
  }

  /** A finding, without its line in the script. */
  record Remark(String severity, String element, String rule, String text) {
    @Override
    public String toString() {
      return severity + ": " + (element.isEmpty() ? "" : element + ": ") + text + " [" + rule + "]";
    }
  }

  /**
   * Reads the tree of a {@code results.json}.
   *
   * @throws PlanException (SYNTAX) without a place, if it is no such tree
   */
  public static Snapshot of(JsonNode root) {
    if (root.path("version").asInt() != ResultsJson.VERSION || !root.path("plan").isObject()) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "this is no results.json of version " + ResultsJson.VERSION + "; draw the plan again");
    }
    JsonNode plan = root.get("plan");
    List<Thing> things = new ArrayList<>();
    root.path("elements").forEach(e -> things.add(thing(e)));
    List<ResultGrid> tables = new ArrayList<>();
    root.path("tables").forEach(t -> tables.add(grid(t)));
    List<Remark> findings = new ArrayList<>();
    root.path("findings")
        .forEach(
            f ->
                findings.add(
                    new Remark(
                        text(f, "severity"),
                        text(f, "element"),
                        text(f, "rule"),
                        text(f, "text"))));
    Shape lot = shape(text(plan, "lotWkt"));
    return new Snapshot(
        info(plan), lot.isEmpty() ? Optional.empty() : Optional.of(lot), things, tables, findings);
  }

  private static PlanInfo info(JsonNode plan) {
    return new PlanInfo(
        text(plan, "id"),
        text(plan, "title"),
        text(plan, "client"),
        text(plan, "author"),
        text(plan, "date"),
        text(plan, "revision"),
        Choices.parse(UnitSystem.class, text(plan, "units"), UnitSystem.US),
        text(plan, "currency"),
        PlanInfo.day(text(plan, "revisionDate")));
  }

  private static Thing thing(JsonNode e) {
    JsonNode at = e.path("atM");
    Optional<Point> point =
        at.size() == 2
            ? Optional.of(Point.metres(at.get(0).asDouble(), at.get(1).asDouble()))
            : Optional.empty();
    return new Thing(text(e, "kind"), text(e, "name"), shape(text(e, "outlineWkt")), point);
  }

  private static ResultGrid grid(JsonNode table) {
    List<ResultGrid.Head> heads = new ArrayList<>();
    table
        .path("columns")
        .forEach(c -> heads.add(new ResultGrid.Head(text(c, "id"), text(c, "title"))));
    List<List<String>> cells = new ArrayList<>();
    List<List<String>> naming = new ArrayList<>();
    for (JsonNode row : table.path("rows")) {
      List<String> shown = new ArrayList<>();
      List<String> names = new ArrayList<>();
      for (int c = 0; c < heads.size(); c++) {
        JsonNode cell = row.path(heads.get(c).id());
        boolean isFigure = cell.has("si") || cell.has("number") || cell.has("formula");
        shown.add(text(cell, "shown"));
        names.add(c > 0 && isFigure ? "" : text(cell, "shown"));
      }
      cells.add(shown);
      naming.add(names);
    }
    return new ResultGrid(text(table, "id"), text(table, "title"), heads, naming, cells);
  }

  private static Shape shape(String wkt) {
    if (wkt.isEmpty()) {
      return Shape.EMPTY;
    }
    try {
      return Shape.of(new WKTReader().read(wkt));
    } catch (ParseException e) {
      PlanException problem =
          new PlanException(ProblemCode.SYNTAX, "an outline cannot be read: " + e.getMessage());
      problem.initCause(e);
      throw problem;
    }
  }

  private static String text(JsonNode node, String field) {
    return node.path(field).asText("");
  }
}
