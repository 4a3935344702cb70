package yardloom.sun.figure;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Months;
import yardloom.sun.spot.SunSpots;
import yardloom.sun.yard.SunField;

/** Maps of direct sun: the season with the best free ground, and the twelve months. */
final class SunFigures {
  private static final Style SPOT = Style.line("sun-best-spot", "#b3261e", 0.7);
  private static final double SEASON_MM = 110;
  private static final double MONTHS_MM = 250;
  private static final int MONTHS = 12;
  private static final double RANK_MM = 3.5;

  private static final double TALL_SEASON_MM = 85;

  private SunFigures() {}

  static Panel.Figure season(Plan plan, SunField field, Optional<SunSpots> spots) {
    double widthMm = YardOutline.isTall(plan) ? TALL_SEASON_MM : SEASON_MM;
    YardOutline yard = new YardOutline(plan, widthMm);
    HourBands.Bands bands =
        new HourBands.Bands(
            field.season(), yard.ground(), YardOutline.roomOf(plan), yard.labelRoomM(), 0, 0);
    List<Mark> marks = new ArrayList<>(HourBands.marks("season", List.of(bands)).get(0));
    marks.addAll(yard.marks("Mean day of " + field.seasonText(), 0, 0));
    marks.addAll(yard.northAndBar(1));
    List<LegendEntry> legend = new ArrayList<>(HourBands.legend());
    for (SunSpots.Search search : spots.map(SunSpots::searches).orElse(List.of())) {
      for (int i = 0; i < search.found().size(); i++) {
        SunSpots.Found found = search.found().get(i);
        String rank = Integer.toString(i + 1);
        marks.add(new Mark.Region(found.ground(), SPOT, "place " + rank + " for " + search.crop()));
        marks.add(
            new Mark.Label(found.ground().heart(), rank, RANK_MM, true, 1, Mark.Anchor.CENTRE));
      }
      if (!search.found().isEmpty()) {
        legend.add(LegendEntry.line("best free ground for " + search.crop() + ", by rank", SPOT));
      }
    }
    return new Panel.Figure("Direct sun in the season", marks, legend, widthMm, 0);
  }

  static Panel.Figure months(Plan plan, SunField field) {
    int columns = YardOutline.isTall(plan) ? MONTHS / 2 : MONTHS / 3;
    YardOutline yard = new YardOutline(plan, MONTHS_MM, columns);
    Shape room = YardOutline.roomOf(plan);
    List<HourBands.Bands> bands = new ArrayList<>();
    for (int m = 0; m < MONTHS; m++) {
      bands.add(
          new HourBands.Bands(
              field.months().get(m),
              yard.ground(),
              room,
              yard.labelRoomM(),
              yard.rightM(m),
              yard.upM(m)));
    }
    List<List<Mark>> drawn = HourBands.marks("months", bands);
    List<Mark> marks = new ArrayList<>();
    for (int m = 0; m < MONTHS; m++) {
      marks.addAll(drawn.get(m));
      String name = Months.fullName(Month.of(m + 1));
      marks.addAll(yard.marks(name, yard.rightM(m), yard.upM(m)));
    }
    marks.addAll(yard.northAndBar(MONTHS / columns));
    return new Panel.Figure(
        "Direct sun on the mean day of each month", marks, HourBands.legend(), MONTHS_MM, 0);
  }
}
