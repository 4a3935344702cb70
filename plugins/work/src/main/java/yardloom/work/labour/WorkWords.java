package yardloom.work.labour;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.kernel.vocab.YearDays;

/** The words about the crew, its days and its pace. */
public final class WorkWords {
  private static final String PACE = "pace of work";

  /** As an item may ask for. */
  private static final double MOST_HOURS = 10_000;

  private static final List<String> COLUMNS = List.of("task", "unit", "low", "likely", "high");

  private WorkWords() {}

  @Verb(
      help = "Says who works when, and when frost is usual.",
      example = "work(crew: 3, hoursPerDay: 6, start: '2026-09-14', firstFrost: '10-20')")
  public static void work(
      PlanScope plan,
      @Opt(name = "crew", help = "people at work", fallback = "2") Number crew,
      @Opt(name = "hoursPerDay", help = "hours of each person a day", fallback = "6")
          Number hoursPerDay,
      @Opt(name = "slope", help = "rise over run of the barrow's way", fallback = "0") Number slope,
      @Opt(name = "start", help = "first day, as year-month-day", fallback = "none: days count")
          String start,
      @Opt(name = "lastFrost", help = "mean last frost, as month-day", fallback = "none")
          String lastFrost,
      @Opt(name = "firstFrost", help = "mean first frost, as month-day", fallback = "none")
          String firstFrost,
      @Opt(
              name = "visits",
              help = "visits after the work to water and weed, through the first season",
              fallback = "12 where something is planted")
          Number visits) {
    double people = crew == null ? 2 : crew.doubleValue();
    double hours = hoursPerDay == null ? 6 : hoursPerDay.doubleValue();
    double rise = slope == null ? 0 : slope.doubleValue();
    if (!(people >= 1 && people <= 50 && people == Math.rint(people))
        || !(hours > 0 && hours <= 14)
        || !(Math.abs(rise) <= 0.5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a crew has 1 to 50 people, a day 0 to 14 hours, a slope up to 0.5 (rise over run)");
    }
    if (plan.draft().attributes().has(WorkSettings.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "`work` is already given; say it once");
    }
    plan.draft()
        .attributes()
        .add(
            WorkSettings.KEY,
            new WorkSettings(
                (int) people,
                hours,
                rise,
                visits(visits, plan.place()),
                Optional.ofNullable(start)
                    .map(text -> YearDays.date(plan.place(), text, "2026-09-14")),
                day(lastFrost, plan.place(), "04-20"),
                day(firstFrost, plan.place(), "10-20"),
                Workdays.ALL,
                plan.place()),
            plan.place());
  }

  @Verb(
      help =
          "Days beside weekends on which nobody works, such as public holidays: of one year as"
              + " year-month-day, or of every year as month-day. A regional file's are added.",
      example = "daysOff(['2027-05-31', '07-04', '12-25'])")
  public static void daysOff(
      PlanScope plan, @Arg(name = "days", help = "a list of dates") List<?> days) {
    Set<LocalDate> once = new TreeSet<>();
    Set<MonthDay> yearly = new TreeSet<>();
    for (Object day : days) {
      String text = String.valueOf(day);
      if (text.length() == "07-04".length()) {
        yearly.add(day(text, plan.place(), "07-04").orElseThrow());
      } else {
        once.add(YearDays.date(plan.place(), text, "2027-05-31"));
      }
    }
    int before =
        plan.draft().attributes().all(Workdays.KEY).stream().mapToInt(e -> e.value().size()).sum();
    if (days.isEmpty() || before + once.size() + yearly.size() > Workdays.MOST) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "days off are 1 to " + Workdays.MOST + " in all, got " + (before + days.size()));
    }
    plan.draft().attributes().add(Workdays.KEY, new Workdays(once, yearly), plan.place());
  }

  private static Derived<Integer> visits(Number given, SourceRef place) {
    if (given == null) {
      return WorkSettings.VISITS;
    }
    double visits = given.doubleValue();
    if (!(visits >= 0 && visits <= 366 && visits == Math.rint(visits))) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, place, "visits are a whole number from 0 to 366, got " + given);
    }
    return Derived.given((int) visits, "work visits", place);
  }

  private static Optional<MonthDay> day(String text, SourceRef place, String example) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(MonthDay.parse("--" + text));
    } catch (DateTimeParseException e) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          place,
          "'" + text + "' is not a date of the form '" + example + "'");
    }
  }

  @Verb(
      help = "Gives the hours of a task here; they go before the shipped ones.",
      example =
          "localLabour('plant from pots', likely: 0.1, low: 0.05, high: 0.2, unit: 'piece',"
              + " source: publication('Planting', by: 'crew', seen: 'memory'))")
  public static void localLabour(
      PlanScope plan,
      @Arg(name = "task", help = "the task, as the labour table names it") String task,
      @Opt(name = "likely", help = "hours of one person for one unit", required = true)
          Number likely,
      @Opt(name = "low", help = "least", fallback = "the likely") Number low,
      @Opt(name = "high", help = "most", fallback = "the likely") Number high,
      @Opt(name = "unit", help = "per what: the unit of the task", required = true) String unit,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source) {
    try {
      add(plan, rate(plan, task, unit, Spread.given(low, likely, high, 0, PACE, source)));
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }

  @Verb(
      help =
          "Takes hours of tasks from a table: a header task,unit,low,likely,high and a line for"
              + " each, hours of one person for one unit.",
      example = "labourBook('task,unit,low,likely,high\\ncut edge,ft,0.02,0.04,0.07')")
  public static void labourBook(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('labour.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "labour book")
          String name) {
    OwnTable table = OwnTable.of(plan, csv, name, "labour book");
    Source book = Source.plan("labour book " + table.name());
    table.each(COLUMNS, List.of(), row -> row(plan, row, book));
  }

  private static void row(PlanScope plan, DataRow row, Source book) {
    Spread hours =
        Spread.given(
            row.number("low"),
            row.number("likely"),
            row.number("high"),
            0,
            PACE,
            row.sourceOr(book));
    add(plan, rate(plan, row.text("task"), row.text("unit"), hours));
  }

  private static LocalRate rate(PlanScope plan, String task, String unit, Spread hours) {
    requireUnit(task, unit);
    if (hours.high() > MOST_HOURS) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "hours for one unit are at most %,.0f; \"%s\" has %s",
              MOST_HOURS,
              task,
              hours.high()));
    }
    return new LocalRate(LocalRate.Kind.LABOUR, task, unit, hours, plan.place());
  }

  private static void add(PlanScope plan, LocalRate rate) {
    Making.once(
        plan,
        LabourRates.KEY,
        r -> r.item().equals(rate.item()),
        "the rate of \"" + rate.item() + "\"");
    plan.draft().attributes().add(LabourRates.KEY, rate, plan.place());
  }

  private static void requireUnit(String task, String unit) {
    String shipped = LabourData.unit(task);
    Optional<Dimension> wanted = Unit.byWord(shipped).map(Unit::dimension);
    boolean same =
        unit.equals(shipped)
            || wanted.isPresent() && Unit.byWord(unit).map(Unit::dimension).equals(wanted);
    if (!same) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "'"
              + unit
              + "' is no unit for this rate; write "
              + shipped
              + " or another unit of its kind, for \""
              + task
              + "\"");
    }
  }
}
