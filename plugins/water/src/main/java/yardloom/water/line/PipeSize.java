package yardloom.water.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.pipe.formula.PipeSpeed;

/**
 * A size of tube that is sold.
 *
 * @param bore inside
 * @param roll length that is sold in one piece
 * @param tube what kind of pipe it is, as the bill calls it behind its size
 */
public record PipeSize(String name, Length bore, Length roll, String tube, Source source) {
  /** Sizes of a plan's own, said by {@code pipeSize} and {@code pipeSizes}. */
  static final AttributeKey<PipeSize> OWN = new AttributeKey<>("water.pipe-size", PipeSize.class);

  /** Whether pipe is sold in sizes of the plan's own alone. */
  static final AttributeKey<Boolean> ONLY_OWN =
      new AttributeKey<>("water.pipe-sizes-only", Boolean.class);

  /** What tube is where nobody says otherwise. */
  static final String USUAL_TUBE = "polyethylene tube";

  /** Bores nearer than that are one size, said more or less exactly. */
  private static final double SAME_BORE_M = 0.0001;

  private static final List<DataRow> ROWS = DataTable.shipped(PipeSize.class, "sizes.csv").rows();
  private static final SourceTable SOURCES = SourceTable.beside(PipeSize.class);

  /** Those that a plan may use, from the narrowest to the widest; its own before the shipped. */
  static List<PipeSize> all(Plan plan) {
    List<PipeSize> all = new ArrayList<>();
    // A later file goes before an earlier one, as a plan does before the region it includes.
    List<Entry<PipeSize>> own = new ArrayList<>(plan.attributes().all(OWN));
    Collections.reverse(own);
    own.forEach(e -> e.value().addTo(all));
    if (!plan.attributes().get(ONLY_OWN).orElse(false)) {
      shipped(plan.info().units()).forEach(s -> s.addTo(all));
    }
    all.sort(Comparator.comparing(PipeSize::bore));
    return List.copyOf(all);
  }

  private void addTo(List<PipeSize> sizes) {
    if (sizes.stream().noneMatch(this::isSame)) {
      sizes.add(this);
    }
  }

  /** Whether both go by one name or have one bore. */
  boolean isSame(PipeSize other) {
    return name.equalsIgnoreCase(other.name)
        || Math.abs(bore.metres() - other.bore.metres()) < SAME_BORE_M;
  }

  /** The usual roll where sizes are sold by feet or by metres. */
  static Length usualRoll(UnitSystem units) {
    return shipped(units).get(0).roll();
  }

  static List<PipeSize> shipped(UnitSystem units) {
    List<PipeSize> sizes = new ArrayList<>();
    for (DataRow row : ROWS) {
      if (row.text("units").equals(units == UnitSystem.US ? "us" : "metric")) {
        sizes.add(
            new PipeSize(
                row.text("size"),
                Length.millimetres(row.number("bore_mm")),
                Length.metres(row.number("roll_m")),
                USUAL_TUBE,
                SOURCES.cited(row, "source")));
      }
    }
    return List.copyOf(sizes);
  }

  /** The flow at which water in it reaches the usual limit of speed. */
  Derived<Flow> most() {
    double flow = PipeSpeed.flowM3s(PipeSpeed.LIMIT_MS, bore.metres());
    return Derived.by("π / 4 × bore^2 × way in a second / 1 s", source)
        .from("bore", bore)
        .from("way in a second", Length.metres(PipeSpeed.LIMIT_MS))
        .gives(Flow.cubicMetresPerSecond(flow));
  }

  /**
   * What a length of it costs, as a measure to compare sizes by: pipe of one pressure class weighs
   * as the square of its width.
   */
  double cost(Length length) {
    return length.metres() * bore.metres() * bore.metres();
  }
}
