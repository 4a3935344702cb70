package yardloom.sun.bed;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.SolarRadiation;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.sun.hours.DayLight;
import yardloom.sun.light.formula.DailyLight;
import yardloom.sun.position.CivilDay;
import yardloom.sun.position.CivilDay.Horizon;
import yardloom.sun.position.SunYear;

/** When sun comes and goes in the middle of each bed, and how much light that brings. */
public final class LightTable implements TableMaker {
  private static final int[] MONTHS = {2, 5, 8, 11};
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final Source DLI =
      Source.computed(
          "Daily Light Integral: A Research Review, HortScience 53",
          "J. E. Faust, J. Logan",
          2018,
          "pp. 1250-1257: 7.265 mol/kWh");
  private static final Source GEOMETRY =
      Source.computed(
          "Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302",
          "I. Reda, A. Andreas",
          2008,
          "");

  @Override
  public String id() {
    return "sun-light";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BedSuns.KEY, YardFacts.RADIATION);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Sun by the clock and light in the middle of each bed")
            .column(Column.text("place", "Place"))
            .column(Column.text("day", "Day"))
            .column(Column.text("first", "First sun"))
            .column(Column.text("last", "Last sun"))
            .column(Column.of("longest", "Longest unbroken", Measure.HOURS))
            .column(Column.of("direct", "Direct sun", Measure.HOURS))
            .column(Column.of("morning", "Before noon", Measure.HOURS))
            .column(Column.of("sky", "Sky seen", Measure.PERCENT))
            .column(Column.of("dli", "Daily light, mol/m²", Measure.RATIO));
    Optional<BedSuns> suns = facts.find(BedSuns.KEY);
    if (suns.isEmpty() || plan.site().isEmpty() || suns.get().beds().isEmpty()) {
      return table.build();
    }
    Site site = plan.site().get();
    suns.get().beds().forEach(b -> rows(table, b, site));
    rows(table, suns.get().open(), site);
    table.note(
        "Days are the mean days of the months. Clock: "
            + site.zone()
            + ", of the year "
            + SunYear.REFERENCE_YEAR
            + ". Sunny means at least half of the direct light.");
    table.note(lightNote(facts));
    return table.build();
  }

  private static String lightNote(Facts facts) {
    String guide =
        " Guide: fruiting vegetables 20 to 25 mol, most ornamentals up to 12 (University of"
            + " Florida, as quoted in a trade note).";
    return facts
        .find(YardFacts.RADIATION)
        .flatMap(SolarRadiation::given)
        .map(
            given ->
                "Daily light from given radiation ("
                    + given.source().cite()
                    + "): its diffuse part by the monthly fit of Erbs, Klein and Duffie, 1982 (from"
                    + " memory), by the share of sky seen; the rest where the sun reaches, "
                    + DLI.cite()
                    + "."
                    + guide)
        .orElse(
            "Daily light under a clear sky: direct part by the ASCE-EWRI clear-sky index where the"
                + " sun reaches, diffuse part by the share of sky seen, "
                + DLI.cite()
                + ". Cloud takes a third to a half of it in most places (from memory, unverified);"
                + " the word solarRadiation takes measured values."
                + guide);
  }

  private static void rows(Table.Builder table, BedSun bed, Site site) {
    String place = bed.bed().map(ElementId::toString).orElse("open level ground");
    for (int m : MONTHS) {
      MonthDay day = SunYear.MEAN_DAYS.get(m);
      DayLight light = bed.middle().get(m);
      String date = TableFormat.day(day);
      boolean sunny = light.lastHour() > light.firstHour();
      table.row(
          Cell.text(place),
          Cell.of(day),
          Cell.text(sunny ? clock(site, day, light.firstHour()) : "none"),
          Cell.text(sunny ? clock(site, day, light.lastHour()) : "none"),
          Spells.cell(light.longestHours(), light.longest(), place, date),
          Spells.cell(light.directHours(), light.spells(), place, date),
          Spells.cell(light.morningHours(), Spells.beforeNoon(light), place, date),
          Cell.of(
              Derived.by("sky seen by a level surface, weighted by sin(elevation)", GEOMETRY)
                  .from("place", place)
                  .gives(bed.skyView().get(m))),
          light(bed, m, place, date));
    }
  }

  private static Cell light(BedSun bed, int month, String place, String date) {
    return bed.dailyLight().isEmpty()
        ? Cell.BLANK
        : Cell.of(
            Derived.by("(direct + sky seen × diffuse) / MJ in a kWh × mol in a kWh", DLI)
                .from("place", place)
                .from("day", date)
                .from("direct, MJ/m²", bed.dailyLight().get(month).direct())
                .from("diffuse, MJ/m²", bed.dailyLight().get(month).diffuse())
                .from("sky seen", bed.dailyLight().get(month).skySeen())
                .from("MJ in a kWh", DailyLight.MJ_PER_KWH)
                .from("mol in a kWh", DailyLight.MOL_PER_KWH)
                .gives(bed.dailyLight().get(month).mol()));
  }

  private static String clock(Site site, MonthDay day, double fromNoon) {
    LocalDate date = day.atYear(SunYear.REFERENCE_YEAR);
    ZonedDateTime noon =
        new CivilDay(site.latitude().degrees(), site.longitude().degrees(), Horizon.CENTRE)
            .on(date, site.zone())
            .transit();
    return noon.plusSeconds(Math.round(fromNoon * 3600) + 30).format(CLOCK);
  }
}
