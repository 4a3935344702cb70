package yardloom.materials;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Function;
import yardloom.facts.WayStart;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.materials.data.FeedstockData;
import yardloom.materials.data.PriceBook;
import yardloom.materials.model.Material;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Price;
import yardloom.materials.model.Residue;
import yardloom.materials.model.TipSpot;
import yardloom.materials.model.WorkSettings;

/** The words about deliveries, prices and the work. */
public final class WorkWords {
  private static final Volume BARROW = Volume.cubicFeet(6);

  private WorkWords() {}

  @Verb(
      help = "Says where a truck may tip a heap, and with what it is carried on.",
      example = "tipPile('drive', rect(48.ft, 2.ft, 10.ft, 18.ft), access: 10.ft)")
  public static void tipPile(
      PlanScope plan,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground that the heap may take") Shape shape,
      @Opt(
              name = "material",
              help = "what is tipped there",
              fallback = "wood chips",
              choices = Material.class)
          String material,
      @Opt(name = "angle", help = "angle at which the heap stands", fallback = "37 degrees")
          Angle angle,
      @Opt(name = "access", help = "width of the truck's way", fallback = "10 ft") Length access,
      @Opt(name = "barrow", help = "what one barrow takes", fallback = "6 cu ft") Volume barrow,
      @Opt(
              name = "detour",
              help = "over open ground: way walked over shortest way",
              fallback = "1.2")
          Number detour,
      @Opt(
              name = "way",
              help = "middle of the truck's way from the street",
              fallback = "not drawn or checked")
          Line way) {
    if (shape.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, plan.place(), "the tip spot " + name + " has no area");
    }
    Angle repose = angle == null ? Angle.degrees(37) : angle;
    if (!(repose.degrees() >= 10 && repose.degrees() <= 60)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "heaps of chips or compost stand at 10 to 60 degrees, got " + repose.degrees());
    }
    Volume each = barrow == null ? BARROW : barrow;
    double factor = detour == null ? 1.2 : detour.doubleValue();
    if (each.litres() < 10 || each.cubicMetres() > 2 || !(factor >= 1 && factor <= 5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a barrow takes 0.4 cu ft (10 L) to 70 cu ft (2 m³) and a detour is 1 to 5");
    }
    plan.draft()
        .attributes()
        .add(
            MaterialKeys.TIP_SPOT,
            new TipSpot(
                name,
                plan.place(),
                shape,
                Choices.parse(Material.class, material, Material.WOOD_CHIPS),
                repose,
                Optional.ofNullable(way),
                access == null ? Length.feet(10) : access,
                each,
                factor),
            plan.place())
        .add(WayStart.KEY, new WayStart(name, shape), plan.place());
  }

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
          String firstFrost) {
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
    if (plan.draft().attributes().has(MaterialKeys.WORK)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "`work` is already given; say it once");
    }
    plan.draft()
        .attributes()
        .add(
            MaterialKeys.WORK,
            new WorkSettings(
                (int) people,
                hours,
                rise,
                date(start, plan.place(), "2026-09-14", LocalDate::parse),
                date(lastFrost, plan.place(), "04-20", t -> MonthDay.parse("--" + t)),
                date(firstFrost, plan.place(), "10-20", t -> MonthDay.parse("--" + t)),
                plan.place()),
            plan.place());
  }

  private static <T> Optional<T> date(
      String text, SourceRef place, String example, Function<String, T> parse) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(text));
    } catch (DateTimeParseException e) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          place,
          "'" + text + "' is not a date of the form '" + example + "'");
    }
  }

  @Verb(
      help = "Sets your own price of an item; it goes before the invented demo price.",
      example = "price('wood-chip mulch', 12.money, low: 0.money, high: 20.money, per: 'yd3')")
  public static void price(
      PlanScope plan,
      @Arg(name = "item", help = "the item on the bill, or 'any' and a group") String item,
      @Arg(name = "likely", help = "likely price of one unit") Money likely,
      @Opt(name = "low", help = "lowest price", fallback = "the likely price") Money low,
      @Opt(name = "high", help = "highest price", fallback = "the likely price") Money high,
      @Opt(name = "per", help = "unit: piece, yd3, m3, ft, m, h …", fallback = "piece")
          String per) {
    String csv =
        String.join(
            ",",
            quoted(item),
            quoted(per == null ? Price.PIECE : per),
            Double.toString((low == null ? likely : low).amount()),
            Double.toString(likely.amount()),
            Double.toString((high == null ? likely : high).amount()));
    add(plan, "price", "item,unit,low,likely,high\n" + csv + "\n");
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  @Verb(
      help = "Takes your own price book: lines of item, unit, low, likely, high under a header.",
      example = "priceBook('item,unit,low,likely,high\\ncompost,yd3,30,35,50')")
  public static void priceBook(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('prices.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "price book")
          String name) {
    add(plan, name == null ? "price book" : name, csv);
  }

  private static void add(PlanScope plan, String name, String csv) {
    try {
      PriceBook.read(name, csv)
          .forEach(p -> plan.draft().attributes().add(MaterialKeys.PRICE, p, plan.place()));
    } catch (PlanException e) {
      // The word's own place leads to the text; the message says where in the text.
      SourceRef in = e.problems().get(0).place();
      String where =
          in.line() <= 0
              ? ""
              : name + ":" + in.line() + (in.column() > 0 ? ":" + in.column() : "") + ": ";
      throw new PlanException(
          e.problems().get(0).code(), plan.place(), where + e.problems().get(0).message());
    }
  }

  @Verb(
      help = "Says how much a season of weeding or pruning brings, to be composted in the yard.",
      example = "residue('shrub trimmings', 1.5.yd3)")
  public static void residue(
      PlanScope plan,
      @Arg(name = "material", help = "a material of the compost table") String material,
      @Arg(name = "volume", help = "loose volume of a season") Volume volume) {
    FeedstockData.of(material);
    if (!(volume.cubicMetres() > 0 && volume.cubicMetres() < 1000)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "a season brings more than nothing and less than 1000 m³ of " + material);
    }
    plan.draft()
        .attributes()
        .add(MaterialKeys.RESIDUE, new Residue(material, volume, plan.place()), plan.place());
  }
}
