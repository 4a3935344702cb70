package yardloom.sheet.compose;

import java.util.List;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;

/**
 * A finished sheet: ink on paper.
 *
 * @param id file name part, lower case with hyphens
 * @param number the sheet's number in its set
 * @param title what the sheet shows
 * @param description for readers who cannot see it
 * @param scale as written in the title block; empty without a drawing to scale
 */
public record ComposedSheet(
    String id,
    int number,
    String title,
    String description,
    Paper paper,
    String scale,
    List<Ink> inks) {
  public ComposedSheet {
    inks = List.copyOf(inks);
  }
}
