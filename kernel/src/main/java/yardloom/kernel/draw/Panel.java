package yardloom.kernel.draw;

import java.util.List;
import java.util.Set;
import yardloom.kernel.table.Table;

/** One block of a sheet. */
public sealed interface Panel permits Panel.SitePlan, Panel.Figure, Panel.TableBlock, Panel.Notes {

  /** The site at the sheet's true scale; {@code layers} empty means all layers that are on. */
  record SitePlan(Set<String> layers) implements Panel {}

  /**
   * A figure of its own, in its own metres.
   *
   * @param minWidthMm the least width on paper at which it can be read
   * @param scaleDenominator true scale as in 1:n, or 0 to fit the space
   */
  record Figure(
      String title,
      List<Mark> marks,
      List<LegendEntry> legend,
      double minWidthMm,
      double scaleDenominator)
      implements Panel {}

  /** A table. */
  record TableBlock(Table table) implements Panel {}

  /** Paragraphs of text under a heading. */
  record Notes(String title, List<String> paragraphs) implements Panel {}
}
