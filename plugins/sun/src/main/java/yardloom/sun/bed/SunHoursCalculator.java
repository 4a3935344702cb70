package yardloom.sun.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import yardloom.facts.LightNeed;
import yardloom.facts.SunHours;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.vocab.Choices;
import yardloom.sun.body.Ground;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.DayLight;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.light.LightScheme;
import yardloom.sun.shade.ShadeScene;
import yardloom.sun.yard.FieldMaker;
import yardloom.sun.yard.SunField;
import yardloom.sun.yard.YardSun;

/**
 * Gives direct sun over the lot, for each bed and for each tree whose kind asks for sun. A bed's
 * own plants do not shade the bed they stand in, nor a tree itself. Gives nothing without a site.
 */
public final class SunHoursCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.hours";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardSun.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.LIGHT_NEEDS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SUN_HOURS, SunField.KEY, BedSuns.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    if (plan.site().isEmpty()) {
      return;
    }
    Site site = plan.site().get();
    YardSun yard = in.get(YardSun.KEY);
    Optional<CellGrid> grid = yard.grid(plan);
    if (grid.isEmpty()) {
      return;
    }
    FieldMaker fields = new FieldMaker(plan, yard, grid.get());
    SunField field = fields.make();
    LightScheme scheme = yard.settings.scheme();
    BedSun open = Piece.of("open", new Sky(site, yard), s -> open(s.site(), s.yard(), scheme));
    List<BedSun> beds = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      BedPlace place = new BedPlace(bed.id(), bed.shape(), YardSun.soilM(bed), yard, field);
      beds.add(Piece.of(bed.id().toString(), place, p -> bed(p, scheme)));
    }
    for (Element.Tree tree : planted(plan, in)) {
      double middleM = tree.crownBase().plus(tree.height()).metres() / 2;
      TreePlace place = new TreePlace(tree.id(), tree.at(), middleM, yard);
      beds.add(Piece.of(tree.id().toString(), place, p -> tree(p, scheme)));
    }
    String method = method(yard, site, grid.get());
    out.give(SunField.KEY, field);
    out.give(BedSuns.KEY, new BedSuns(beds, open, scheme, field.seasonText(), method));
    Map<ElementId, SunHours.Place> byElement = new TreeMap<>();
    beds.forEach(b -> byElement.put(b.bed().orElseThrow(), place(b)));
    String limits = "'" + scheme.name() + "': " + scheme.text();
    List<String> classes = scheme.classes().stream().map(LightScheme.LightClass::name).toList();
    out.give(
        YardFacts.SUN_HOURS,
        new SunHours(byElement, place(open), field.seasonText(), classes, limits, method));
  }

  private static SunHours.Place place(BedSun sun) {
    return new SunHours.Place(
        sun.monthHours().stream().map(TimeSpan::hours).toList(),
        TimeSpan.hours(sun.seasonHours()),
        sun.lightClass().name());
  }

  /** What the sun of open ground is made of. */
  private record Sky(Site site, YardSun yard) {}

  /** What the sun of a bed is made of. */
  private record BedPlace(ElementId bed, Shape shape, double soilM, YardSun yard, SunField field) {}

  /** What the sun of a tree is made of. */
  private record TreePlace(ElementId tree, Point at, double middleM, YardSun yard) {}

  private static BedSun bed(BedPlace bed, LightScheme scheme) {
    YardSun yard = bed.yard();
    SunField field = bed.field();
    Point heart = bed.shape().heart();
    SunEngine.Looker looker = yard.looker();
    looker.at(heart.x().metres(), heart.y().metres(), bed.soilM(), yard.scene.shadeOf(bed.bed()));
    List<DayLight> middle = IntStream.range(0, 12).mapToObj(looker::day).toList();
    List<Double> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      OptionalDouble mean = field.months().get(m).mean(bed.shape());
      months.add(mean.orElse(middle.get(m).directHours()));
    }
    double season = field.season().mean(bed.shape()).orElse(0);
    double morning = field.morning().mean(bed.shape()).orElse(0);
    double[] sky = looker.skyView();
    return new BedSun(
        Optional.of(bed.bed()),
        months,
        season,
        morning,
        middle,
        DoubleStream.of(sky).boxed().toList(),
        yard.dailyLight(looker, sky),
        scheme.of(season));
  }

  /** The trees whose kind asks for sun. */
  private static List<Element.Tree> planted(Plan plan, Facts in) {
    Set<ElementId> asking =
        in.all(YardFacts.LIGHT_NEEDS).stream().map(LightNeed::in).collect(Collectors.toSet());
    return plan.all(Element.Tree.class).stream().filter(t -> asking.contains(t.id())).toList();
  }

  /** The sun in the middle of a crown, which does not shade itself. */
  private static BedSun tree(TreePlace tree, LightScheme scheme) {
    YardSun yard = tree.yard();
    SunEngine.Looker looker = yard.looker();
    looker.at(
        tree.at().x().metres(),
        tree.at().y().metres(),
        tree.middleM(),
        yard.scene.shadeOf(tree.tree()));
    List<DayLight> days = IntStream.range(0, 12).mapToObj(looker::day).toList();
    SunEngine.Sums sums = looker.sums();
    double season = FieldMaker.seasonMean(sums.hours(), yard);
    double morning = FieldMaker.seasonMean(sums.morningHours(), yard);
    double[] sky = looker.skyView();
    return new BedSun(
        Optional.of(tree.tree()),
        days.stream().map(DayLight::directHours).toList(),
        season,
        morning,
        days,
        DoubleStream.of(sky).boxed().toList(),
        yard.dailyLight(looker, sky),
        scheme.of(season));
  }

  private static BedSun open(Site site, YardSun yard, LightScheme scheme) {
    ShadeScene bare =
        new ShadeScene(
            site.latitude().radians(), site.north().radians(), Ground.LEVEL, List.of(), List.of());
    SunEngine.Looker looker =
        new SunEngine(bare, yard.year, YardSun.COLUMNS).looker(yard.groups, yard.meanDays);
    looker.at(0, 0, 0, ShadeScene.NOBODY);
    List<DayLight> days = IntStream.range(0, 12).mapToObj(looker::day).toList();
    SunEngine.Sums sums = looker.sums();
    double season = FieldMaker.seasonMean(sums.hours(), yard);
    double[] sky = looker.skyView();
    return new BedSun(
        Optional.empty(),
        days.stream().map(DayLight::directHours).toList(),
        season,
        FieldMaker.seasonMean(sums.morningHours(), yard),
        days,
        DoubleStream.of(sky).boxed().toList(),
        yard.dailyLight(looker, sky),
        scheme.of(season));
  }

  private static String method(YardSun yard, Site site, CellGrid grid) {
    return String.format(
        Locale.ROOT,
        "Direct sun: the sun's centre above the level horizon, without refraction, clear sky;"
            + " horizon profiles every %d minutes of hour angle on cells of %s; behind crowns and"
            + " open fences hours count by the share of light that passes. Planned plants: %s.%s",
        24 * 60 / YardSun.COLUMNS,
        Say.both(Measure.LENGTH, Length.metres(grid.cellM())),
        Choices.text(yard.settings.stage()),
        ground(yard, site));
  }

  private static String ground(YardSun yard, Site site) {
    double fall = yard.ground().steepest();
    return fall < 0.001
        ? ""
        : String.format(
            Locale.ROOT,
            " Ground: a plane that falls %.1f %% towards bearing %.0f°.",
            100 * fall,
            StrictMath.toDegrees(yard.ground().fallsTowardsRad(site.north().radians())));
  }
}
