package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Type;

/**
 * Makes the blocks of a sheet's panels; small figures of one width that follow on stand in rows.
 */
final class PanelBlocks {
  private final SheetRequest request;
  private final Type type;
  private final TableFormat format;
  private final double widthMm;
  private final double heightMm;
  private final List<Block> made = new ArrayList<>();
  private final List<Panel.Figure> run = new ArrayList<>();

  /**
   * @param widthMm what a fresh sheet offers
   * @param heightMm what a fresh sheet offers over its whole width
   */
  PanelBlocks(
      SheetRequest request, Type type, TableFormat format, double widthMm, double heightMm) {
    this.request = request;
    this.type = type;
    this.format = format;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  List<Block> blocks() {
    for (Panel panel : request.sheet().panels()) {
      if (panel instanceof Panel.Figure figure) {
        if (!figure.marks().isEmpty()) {
          add(figure);
        }
        continue;
      }
      endRun();
      if (panel instanceof Panel.TableBlock table && !table.table().isEmpty()) {
        made.addAll(TableBlock.of(table.table(), format, type, widthMm));
      } else if (panel instanceof Panel.Notes notes && !notes.paragraphs().isEmpty()) {
        String name = "notes-" + Drawing.slug(notes.title());
        made.add(new Blocks(type).notes(name, notes.title(), notes.paragraphs()));
      } else if (panel instanceof Panel.Enlarged part) {
        enlarged(part);
      }
    }
    endRun();
    return made;
  }

  private void enlarged(Panel.Enlarged part) {
    PartWindow.of(request)
        .map(w -> new PartBlock(part.title(), request, w, type, widthMm, heightMm))
        .ifPresent(made::add);
  }

  private void add(Panel.Figure figure) {
    boolean alike =
        run.isEmpty()
            || figure.scaleDenominator() == 0
                && run.get(0).scaleDenominator() == 0
                && run.get(0).minWidthMm() == figure.minWidthMm();
    if (!alike) {
      endRun();
    }
    run.add(figure);
  }

  private void endRun() {
    UnitSystem units = format.units();
    List<FigureBlock> blocks =
        run.stream().map(f -> new FigureBlock(f, type, units, widthMm, heightMm)).toList();
    if (blocks.size() == 1) {
      made.add(blocks.get(0));
    } else if (!blocks.isEmpty()) {
      double least = Math.min(run.get(0).minWidthMm(), widthMm);
      made.add(FigureRows.of(blocks, least, widthMm, heightMm));
    }
    run.clear();
  }
}
