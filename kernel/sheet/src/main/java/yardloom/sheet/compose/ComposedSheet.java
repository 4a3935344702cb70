package yardloom.sheet.compose;

import java.util.List;
import java.util.Optional;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Scale;

/**
 * A finished sheet: ink on paper.
 *
 * @param id file name part, lower case with hyphens
 * @param number the sheet's number in its set
 * @param title what the sheet shows
 * @param description for readers who cannot see it
 * @param drawnAt the scale of its drawing, if it has one to scale
 */
public record ComposedSheet(
    String id,
    int number,
    String title,
    String description,
    Paper paper,
    Optional<Scale> drawnAt,
    List<Ink> inks) {
  public ComposedSheet {
    inks = List.copyOf(inks);
  }

  /** The scale as written in the title block; empty without a drawing to scale. */
  public String scale() {
    return drawnAt.map(Scale::words).orElse("");
  }
}
