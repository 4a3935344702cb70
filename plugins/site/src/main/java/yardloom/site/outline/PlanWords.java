package yardloom.site.outline;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import yardloom.kernel.draw.SheetChoice;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.site.revision.Revising;
import yardloom.site.revision.Revision;

/** Words for what the plan is called and where on earth it lies. */
public final class PlanWords {
  private static final double HIGHEST_M = 9_000;

  private PlanWords() {}

  @Verb(
      help = "Names the plan and says in which units its sheets speak.",
      example = "plan('Kitchen garden', client: 'A. Client', date: '2026-03-01', units: 'us')")
  public static void plan(
      PlanScope in,
      @Arg(name = "title", help = "the title of the sheets") String title,
      @Opt(name = "client", help = "for whom", fallback = "none") String client,
      @Opt(name = "author", help = "by whom", fallback = "none") String author,
      @Opt(name = "date", help = "date of issue, as it is to be printed", fallback = "none")
          String date,
      @Opt(
              name = "revision",
              help = "revision mark, where no line `revision` says it",
              fallback = "none")
          String revision,
      @Opt(
              name = "units",
              help = "the units of sheets and tables",
              fallback = "us",
              choices = UnitSystem.class)
          String units,
      @Opt(name = "currency", help = "sign printed before prices", fallback = "$")
          String currency) {
    if (in.draft().infoPlace().line() != 0) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          in.place(),
          "`plan` is already given at " + in.draft().infoPlace() + "; a script has one plan");
    }
    PlanInfo before = in.draft().info();
    in.draft()
        .info(
            Revising.newest(
                in.draft().attributes().all(Revision.KEY),
                new PlanInfo(
                    before.id(),
                    Making.name("plan", title),
                    Limits.or(client, ""),
                    Limits.or(author, ""),
                    Limits.or(date, ""),
                    Limits.or(revision, ""),
                    Choices.parse(UnitSystem.class, units, UnitSystem.US),
                    Limits.or(currency, "$")),
                in.place()),
            in.place());
  }

  @Verb(
      help =
          "Says which sheets are drawn, in place of the usual set: cover, layout, grading, materials,"
              + " planting, irrigation, sun, work, crew, client, as far as the plan has them.",
      example = "sheets(['cover', 'planting', 'crew'])")
  public static void sheets(
      PlanScope in, @Arg(name = "names", help = "names of sheets") List<String> names) {
    if (names.isEmpty()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`sheets` needs at least one name; leave the line out for the usual set");
    }
    in.draft().attributes().add(SheetChoice.KEY, new SheetChoice(names), in.place());
  }

  @Verb(
      help = "Says where on earth the yard lies and how the plan is turned.",
      example =
          "site('Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago')")
  public static void site(
      PlanScope in,
      @Arg(name = "name", help = "how the place is called") String name,
      @Opt(name = "latitude", help = "north positive", required = true) Angle latitude,
      @Opt(name = "longitude", help = "east positive", required = true) Angle longitude,
      @Opt(name = "elevation", help = "height above sea level", fallback = "0 m") Length elevation,
      @Opt(
              name = "zone",
              help = "time zone by region and city, such as America/Chicago",
              required = true)
          String zone,
      @Opt(
              name = "north",
              help = "bearing of true north, clockwise from the plan's up direction",
              fallback = "0 degrees: north is up")
          Angle north) {
    Length height = Limits.or(elevation, Length.ZERO);
    if (height.metres() < -500 || height.metres() > HIGHEST_M) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the elevation must lie between -500 m and 9000 m, got " + Limits.show(height));
    }
    in.draft()
        .site(
            new Site(
                Making.name("site", name),
                latitude,
                longitude,
                height,
                zoneOf(zone),
                Limits.or(north, Angle.ZERO)),
            in.place());
  }

  private static ZoneId zoneOf(String zone) {
    if (!ZoneId.getAvailableZoneIds().contains(zone)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "'"
              + zone
              + "' is not a time zone; write region and city, such as 'America/Los_Angeles'."
              + yardloom.kernel.problem.Nearest.hint(zone, ZoneId.getAvailableZoneIds()));
    }
    try {
      return ZoneId.of(zone);
    } catch (DateTimeException e) {
      throw new PlanException(ProblemCode.UNKNOWN_WORD, "'" + zone + "' is not a time zone");
    }
  }
}
