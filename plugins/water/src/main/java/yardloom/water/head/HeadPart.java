package yardloom.water.head;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.vocab.Choices;
import yardloom.water.head.formula.TapCurve;

/**
 * One part at the tap.
 *
 * @param loss what it takes at the flow {@code at}, clean
 * @param isInEachZone whether it stands once in each zone, not once at the tap
 * @param isOwn whether a plan names it
 */
public record HeadPart(
    String name,
    Kind kind,
    Pressure loss,
    Flow at,
    String purpose,
    boolean isInEachZone,
    boolean isOwn,
    Source source) {
  /** What it is for. */
  public enum Kind {
    SHUT_OFF,
    TIMER,
    BACKFLOW,
    FILTER,
    REGULATOR,
    ZONE_VALVE,
    OTHER
  }

  private static final Map<String, HeadPart> SHIPPED = shipped();

  /** The shipped part of that name. */
  static HeadPart of(String name) {
    return SHIPPED.get(name);
  }

  /** The names of the shipped parts, in the order in which water passes them. */
  static Set<String> names() {
    return Collections.unmodifiableSet(SHIPPED.keySet());
  }

  /** What it takes at another flow. */
  public Pressure loss(Flow flow) {
    return TapCurve.loss(flow, loss, at);
  }

  private static Map<String, HeadPart> shipped() {
    SourceTable sources = SourceTable.beside(HeadPart.class);
    Map<String, HeadPart> parts = new LinkedHashMap<>();
    for (DataRow row : DataTable.shipped(HeadPart.class, "parts.csv").rows()) {
      Kind kind = Choices.parse(Kind.class, row.text("kind"));
      HeadPart part =
          new HeadPart(
              row.text("part"),
              kind,
              Pressure.psi(row.number("loss_psi")),
              Flow.gallonsPerMinute(row.number("at_gpm")),
              row.text("purpose"),
              kind == Kind.ZONE_VALVE || kind == Kind.REGULATOR,
              false,
              sources.cited(row, "source"));
      parts.put(part.name(), part);
    }
    return parts;
  }
}
