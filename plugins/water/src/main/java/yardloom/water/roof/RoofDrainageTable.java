package yardloom.water.roof;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.roof.formula.GutterFlow;
import yardloom.water.roof.formula.RoofDrainage;

/** What each roof needs on its way down: a downspout, and a pipe for the first dirty water. */
public final class RoofDrainageTable implements TableMaker {
  private static final String ID = "roof-drainage";

  /** A pipe of one bore may well be longer than the wall is high: the installer chooses. */
  private static final List<Length> STANDING_PIPES =
      List.of(Length.inches(4), Length.inches(6), Length.inches(8));

  private static final Length WHOLE_INCH = Length.inches(1);
  private static final Area SQUARE_INCH = Length.inches(1).by(Length.inches(1));
  private static final Source FIRST =
      Source.commonPractice("first flush of 10 gal for 1,000 sq ft, the usual least");

  private static final Source SIZES =
      Source.commonPractice("round downspouts come in whole inches");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Gutters, downspouts and first flush")
            .column(Column.text("roof", "Roof"))
            .column(Column.of("area", "Plan area", Measure.AREA))
            .column(Column.of("rain", "Cloudburst in an hour", Measure.RAIN))
            .column(Column.of("flow", "Flow off the roof", Measure.FLOW))
            .column(Column.of("downspout", "Round downspout, inside", Measure.DEPTH))
            .column(Column.of("size", "Next whole inch", Measure.DEPTH))
            .column(Column.of("first", "First flush", Measure.WATER))
            .column(Column.of("pipe-4", "Standing pipe for it, 4 in (102 mm) bore", Measure.LENGTH))
            .column(Column.of("pipe-6", "6 in (152 mm) bore", Measure.LENGTH))
            .column(Column.of("pipe-8", "8 in (203 mm) bore", Measure.LENGTH))
            .column(Column.of("drained", "Drained by the plan's downspouts", Measure.AREA))
            .column(Column.of("gutter", "Half-round gutter, width", Measure.DEPTH))
            .column(Column.of("gutter-drains", "Drained by the plan's gutter", Measure.AREA));
    List<Element.Roof> roofs = plan.all(Element.Roof.class);
    Derived<Length> rain = Cloudburst.of(plan);
    for (Element.Roof roof : roofs) {
      Area area = roof.shape().area();
      Derived<Volume> first =
          Derived.by("plan area × 10 gal / 1000 sq ft", FIRST)
              .from("plan area", area, roof.place())
              .gives(FirstFlush.of(area, FirstFlush.LEAST));
      Derived<Length> downspout = downspout(roof, rain);
      List<Cell> row = new ArrayList<>();
      row.add(Cell.text(roof.id().name()));
      row.add(Cell.of(area));
      row.add(Cell.of(rain));
      row.add(Cell.of(flow(roof, rain)));
      row.add(Cell.of(downspout));
      row.add(Cell.of(toBuy(downspout)));
      row.add(Cell.of(first));
      STANDING_PIPES.forEach(inside -> row.add(Cell.of(standingPipe(first, inside))));
      row.add(drained(plan, roof, rain));
      row.add(gutter(plan, roof, rain));
      row.add(gutterDrains(plan, roof, rain));
      table.row(row);
    }
    if (!roofs.isEmpty()) {
      table.note(
          "One downspout for the whole roof; two share it. Gutter: half round, falling 1/16 in a"
              + " foot (5 mm a metre) unless the plan says otherwise, to the plan's downspouts, or"
              + " to one at its end; blank where more downspouts are needed. Cloudburst: "
              + rain.source().cite()
              + ". First flush is the least that is usual; it stands in a pipe of 4, 6 or 8 in (10,"
              + " 15 or 20 cm) inside: choose one that fits under the gutter. Leaf screens and the"
              + " local plumbing code come before both.");
    }
    return table.build();
  }

  /** Downspouts are sold by the inch; the smaller one would not do. */
  private static Derived<Length> toBuy(Derived<Length> inside) {
    return Derived.by("inside diameter, up to the next step", SIZES)
        .from("inside diameter", inside)
        .from("step", WHOLE_INCH)
        .gives(WHOLE_INCH.times(Math.ceil(inside.value().ratioTo(WHOLE_INCH))));
  }

  /** Blank where the plan has no downspouts for the roof. */
  private static Cell drained(Plan plan, Element.Roof roof, Derived<Length> rain) {
    Area section = Downspout.section(plan, roof.id().name());
    if (section.squareMetres() <= 0) {
      return Cell.BLANK;
    }
    return Cell.of(
        Derived.by("section × 1200 / cloudburst in in × 1 sq ft", Downspout.RULE)
            .from("section", section.ratioTo(SQUARE_INCH))
            .from("cloudburst", rain)
            .gives(RoofDrainage.drained(section, rain.value())));
  }

  /** Blank where none of the table is wide enough. */
  private static Cell gutter(Plan plan, Element.Roof roof, Derived<Length> rain) {
    Derived<Area> share = Gutter.share(plan, roof);
    double fall = Gutter.of(plan, roof).map(g -> g.value().fall()).orElse(GutterFlow.USUAL_FALL);
    return GutterFlow.width(share.value(), fall, rain.value())
        .map(
            width ->
                Cell.of(
                    Derived.by("least width of the table that drains its share", Gutter.RULE)
                        .from("its share", share)
                        .from("fall", fall)
                        .from("cloudburst", rain)
                        .gives(width)))
        .orElse(Cell.BLANK);
  }

  private static Cell gutterDrains(Plan plan, Element.Roof roof, Derived<Length> rain) {
    return Gutter.of(plan, roof)
        .map(
            gutter ->
                Cell.of(
                    Derived.by(
                            "drained at 1 in an hour and the usual fall × √(192 × its fall) /"
                                + " cloudburst in in",
                            Gutter.RULE)
                        .from(
                            "drained at 1 in an hour and the usual fall",
                            GutterFlow.drained(
                                gutter.value().width(), GutterFlow.USUAL_FALL, Length.inches(1)),
                            gutter.place())
                        .from("its fall", gutter.value().fall(), gutter.place())
                        .from("cloudburst", rain)
                        .gives(gutter.value().drained(rain.value()))))
        .orElse(Cell.BLANK);
  }

  private static Derived<Length> standingPipe(Derived<Volume> first, Length inside) {
    return Derived.by("first flush / (π / 4 × inside diameter²)", FIRST)
        .from("first flush", first)
        .from("inside diameter", inside)
        .gives(FirstFlush.pipe(first.value(), inside));
  }

  private static Derived<Flow> flow(Element.Roof roof, Derived<Length> rain) {
    return Derived.by("plan area × cloudburst / 1 h", Downspout.RULE)
        .from("plan area", roof.shape().area(), roof.place())
        .from("cloudburst", rain)
        .gives(RoofDrainage.flow(roof.shape().area(), rain.value()));
  }

  private static Derived<Length> downspout(Element.Roof roof, Derived<Length> rain) {
    double squareInches =
        roof.shape().area().ratioTo(RoofDrainage.drained(SQUARE_INCH, rain.value()));
    return Derived.by(
            "√(4 / π × plan area in sq ft × cloudburst in in / 1200) × 1 in", Downspout.RULE)
        .from("plan area", roof.shape().area(), roof.place())
        .from("cloudburst", rain)
        .gives(Length.inches(Math.sqrt(4 / Math.PI * squareInches)));
  }
}
