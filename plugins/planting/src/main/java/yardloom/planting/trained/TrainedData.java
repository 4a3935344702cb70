package yardloom.planting.trained;

import java.util.EnumMap;
import java.util.Map;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.PlantCatalogue;

/** The usual width of each trained form and what one of that width bears. */
public final class TrainedData {
  private static final Map<TrainedForm, Usual> SHIPPED = read();

  private TrainedData() {}

  /**
   * A grown tree of one form.
   *
   * @param low what it bears at least
   * @param high what it bears at most
   * @param widthSource who gives its width
   * @param source who gives what it bears
   */
  public record Usual(Length width, Source widthSource, Mass low, Mass high, Source source) {
    /** What of that a tree kept to {@code kept} bears: by its width, and never more than all. */
    public double share(Length kept) {
      return Math.min(1, kept.ratioTo(width));
    }
  }

  public static Usual of(TrainedForm form) {
    return SHIPPED.get(form);
  }

  private static Map<TrainedForm, Usual> read() {
    SourceTable sources = PlantCatalogue.sources();
    Map<TrainedForm, Usual> forms = new EnumMap<>(TrainedForm.class);
    for (DataRow row : DataTable.shipped(TrainedData.class, "trained.csv").rows()) {
      forms.put(
          Choices.parse(TrainedForm.class, row.text("form")),
          new Usual(
              Length.feet(row.number("width_ft")),
              sources.cited(row, "width_source"),
              Mass.pounds(row.number("low_lb")),
              Mass.pounds(row.number("high_lb")),
              sources.cited(row, "source")));
    }
    return forms;
  }
}
