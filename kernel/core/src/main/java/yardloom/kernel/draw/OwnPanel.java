package yardloom.kernel.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.UnitSystem;

/**
 * A detail or a note of the author's own.
 *
 * @param sheet id of the sheet that it stands on; where that is not drawn it stands on the first
 *     drawing
 * @param panel what stands there; a dimension without text says its length
 */
public record OwnPanel(String sheet, Panel panel) {
  /** On the plan, any number. */
  public static final AttributeKey<OwnPanel> KEY =
      new AttributeKey<>("draw.own-panel", OwnPanel.class);

  /**
   * What stands on those sheets that {@code isHere} lets through: details as they were written,
   * then all notes under one heading. A detail that is drawn again under its title replaces the
   * earlier one.
   */
  public static List<Panel> of(Plan plan, Predicate<String> isHere) {
    Map<String, OwnPanel> details = new LinkedHashMap<>();
    Map<String, List<String>> notes = new LinkedHashMap<>();
    for (Attributes.Entry<OwnPanel> entry : plan.attributes().all(KEY)) {
      OwnPanel own = entry.value();
      if (own.panel() instanceof Panel.Figure figure) {
        details.put(figure.title(), own);
      } else if (own.panel() instanceof Panel.Notes said && isHere.test(own.sheet())) {
        notes.computeIfAbsent(said.title(), k -> new ArrayList<>()).addAll(said.paragraphs());
      }
    }
    List<Panel> all = new ArrayList<>();
    details.values().stream()
        .filter(own -> isHere.test(own.sheet()))
        .forEach(own -> all.add(measured((Panel.Figure) own.panel(), plan.info().units())));
    notes.forEach((title, said) -> all.add(new Panel.Notes(title, said)));
    return all;
  }

  private static Panel measured(Panel.Figure figure, UnitSystem units) {
    return new Panel.Figure(
        figure.title(),
        figure.marks().stream().map(m -> measured(m, units)).toList(),
        figure.legend(),
        figure.minWidthMm(),
        figure.scaleDenominator());
  }

  private static Mark measured(Mark mark, UnitSystem units) {
    if (mark instanceof Mark.Dimension d && d.text().isEmpty()) {
      return new Mark.Dimension(
          d.from(), d.to(), d.offset(), DimensionText.of(d.from().distance(d.to()), units));
    }
    return mark;
  }
}
