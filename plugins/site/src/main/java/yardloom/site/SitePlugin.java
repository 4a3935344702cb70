package yardloom.site;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.PluginInfo;
import yardloom.kernel.spi.Spi;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.vocab.Vocabulary;
import yardloom.site.access.AccessRules;
import yardloom.site.access.WaysCalculator;
import yardloom.site.annotation.DimensionPainter;
import yardloom.site.annotation.LabelPainter;
import yardloom.site.bed.BedPainter;
import yardloom.site.bed.BedRules;
import yardloom.site.bed.BedWords;
import yardloom.site.built.BarrierWords;
import yardloom.site.built.BuildingPainter;
import yardloom.site.built.BuiltWords;
import yardloom.site.built.FencePainter;
import yardloom.site.built.KeepOutPainter;
import yardloom.site.built.PavingPainter;
import yardloom.site.built.StructurePainter;
import yardloom.site.built.UtilityPainter;
import yardloom.site.built.WaterPointPainter;
import yardloom.site.contact.ContactCalculator;
import yardloom.site.contact.ContactTable;
import yardloom.site.contact.ContactWords;
import yardloom.site.country.CountryWords;
import yardloom.site.country.DigCallCalculator;
import yardloom.site.element.ShapeRule;
import yardloom.site.firm.DetailWords;
import yardloom.site.firm.ThemeWords;
import yardloom.site.ground.ContourPainter;
import yardloom.site.ground.EarthCalculator;
import yardloom.site.ground.EarthWords;
import yardloom.site.ground.GradingSheet;
import yardloom.site.ground.GroundRules;
import yardloom.site.ground.GroundTables;
import yardloom.site.ground.LevelRules;
import yardloom.site.ground.LevelWords;
import yardloom.site.ground.SectionLinePainter;
import yardloom.site.ground.SpotLevelPainter;
import yardloom.site.ground.SwalePainter;
import yardloom.site.lawn.GroundPainter;
import yardloom.site.lawn.GroundWords;
import yardloom.site.lawn.LawnStripCalculator;
import yardloom.site.lawn.LawnStripCheck;
import yardloom.site.lawn.LawnStripTable;
import yardloom.site.lot.LotLinePainter;
import yardloom.site.lot.LotPainter;
import yardloom.site.lot.LotRules;
import yardloom.site.lot.LotWords;
import yardloom.site.lot.SiteTables;
import yardloom.site.outline.PlanWords;
import yardloom.site.outline.ShapeWords;
import yardloom.site.path.PathPainter;
import yardloom.site.path.PathRules;
import yardloom.site.path.PathWords;
import yardloom.site.picture.PicturePainter;
import yardloom.site.remark.HiddenLabels;
import yardloom.site.remark.RemarkPainter;
import yardloom.site.remark.RemarkWords;
import yardloom.site.revision.RevisionTable;
import yardloom.site.revision.RevisionWords;
import yardloom.site.setback.DrainFieldRules;
import yardloom.site.setback.RestrictionPainter;
import yardloom.site.setback.RestrictionRules;
import yardloom.site.setback.RestrictionWords;
import yardloom.site.setback.SetbackPainter;
import yardloom.site.setback.SetbackRules;
import yardloom.site.setback.SideWords;
import yardloom.site.setback.SightWords;
import yardloom.site.settingout.LayoutSheet;
import yardloom.site.settingout.SettingOutTable;
import yardloom.site.settingout.TapeNumberPainter;
import yardloom.site.settingout.TapePointPainter;
import yardloom.site.survey.DeedWords;
import yardloom.site.survey.SurveyRules;
import yardloom.site.survey.SurveyTables;
import yardloom.site.survey.SurveyWords;
import yardloom.site.tree.TreePainter;
import yardloom.site.tree.TreeRootRules;
import yardloom.site.tree.TreeStandingRules;
import yardloom.site.tree.TreeWords;

/**
 * The yard itself: the lot and its sides, what stands and lies on it, where something may lie, and
 * the ways. Every other plugin's words extend the blocks that these words open.
 */
public final class SitePlugin implements YardPlugin {
  @Override
  public PluginInfo info() {
    return new PluginInfo("site", "Site", "0.1.0");
  }

  @Override
  public int spiLevel() {
    return Spi.LEVEL;
  }

  @Override
  public List<Vocabulary> vocabularies() {
    return List.of(
        new Vocabulary(
            "site",
            List.of(
                ShapeWords.class,
                PlanWords.class,
                SurveyWords.class,
                DeedWords.class,
                LotWords.class,
                SideWords.class,
                SightWords.class,
                PathWords.class,
                BuiltWords.class,
                BarrierWords.class,
                TreeWords.class,
                BedWords.class,
                GroundWords.class,
                LevelWords.class,
                EarthWords.class,
                RestrictionWords.class,
                RemarkWords.class,
                RevisionWords.class,
                ContactWords.class,
                DetailWords.class,
                ThemeWords.class,
                CountryWords.class)));
  }

  @Override
  public List<Calculator> calculators() {
    return List.of(
        new WaysCalculator(),
        new DigCallCalculator(),
        new ContactCalculator(),
        new EarthCalculator(),
        new LawnStripCalculator());
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new HiddenLabels(),
        new AccessRules.Rule(),
        new ShapeRule("site.bed-outside-lot", LotRules::bedOutsideLot),
        new ShapeRule("site.bed-overlap", BedRules::overlaps),
        new ShapeRule("site.bed-reach", BedRules::reach),
        new ShapeRule("site.building-outside-lot", LotRules::buildingOutsideLot),
        new ShapeRule("site.deed", SurveyRules::deeds),
        new ShapeRule("site.drain-field", DrainFieldRules::near),
        new ShapeRule("site.fall-from-house", GroundRules::fallFromHouse),
        new ShapeRule("site.ground-outside-lot", LotRules::groundOutsideLot),
        new ShapeRule("site.keep-out", BedRules::keepOut),
        new ShapeRule("site.path-building", PathRules::throughBuilding),
        new ShapeRule("site.path-slope", GroundRules::pathSlope),
        new LawnStripCheck(),
        new ShapeRule("site.levels", LevelRules::levels),
        new ShapeRule("site.path-passing", PathRules::passing),
        new ShapeRule("site.path-turning", PathRules::turning),
        new ShapeRule("site.path-width", PathRules::width),
        new ShapeRule("site.restriction", RestrictionRules::restrictions),
        new ShapeRule("site.setback", SetbackRules::within),
        new ShapeRule("site.setback-room", SetbackRules::room),
        new ShapeRule("site.side-role", LotRules::sideRoles),
        new ShapeRule("site.strip-gain", BedRules::stripGains),
        new ShapeRule("site.swale", GroundRules::swales),
        new ShapeRule("site.ties", SurveyRules::ties),
        new ShapeRule("site.tree-roots", TreeRootRules::treeRoots),
        new ShapeRule("site.tree-standing", TreeStandingRules::unsaid),
        new ShapeRule("site.utility-clearance", BedRules::utilities),
        new ShapeRule("site.way-outside-lot", LotRules::wayOutsideLot));
  }

  @Override
  public List<Painter> painters() {
    return Stream.concat(
            PicturePainter.all().stream(),
            Stream.of(
                new LotPainter(),
                new ContourPainter(),
                new SpotLevelPainter(),
                new SectionLinePainter(),
                new SetbackPainter(),
                new GroundPainter(),
                new PavingPainter(),
                new PathPainter(),
                new BedPainter(),
                new BuildingPainter(),
                new StructurePainter(),
                new SwalePainter(),
                new FencePainter(),
                new UtilityPainter(),
                new KeepOutPainter(),
                new TreePainter(),
                new WaterPointPainter(),
                new RestrictionPainter(),
                new LotLinePainter(),
                new TapePointPainter(),
                new TapeNumberPainter(),
                new LabelPainter(),
                new RemarkPainter(),
                new DimensionPainter()))
        .toList();
  }

  @Override
  public List<TableMaker> tables() {
    return List.of(
        new ContactTable(),
        new RevisionTable(),
        new PlanTable("ties", SurveyTables::ties, OnPaper.IF_ROOM, SheetPage.LAYOUT),
        new PlanTable("deed", SurveyTables::deeds, OnPaper.IF_ROOM, SheetPage.LAYOUT),
        new PlanTable("lot-sides", SiteTables::lotSides, OnPaper.IF_ROOM, SheetPage.LAYOUT),
        new PlanTable("areas", SiteTables::areas, OnPaper.IF_ROOM, SheetPage.LAYOUT),
        new PlanTable("buildable-limits", SiteTables::buildableLimits),
        new PlanTable("beds", SiteTables::beds, OnPaper.IF_ROOM, SheetPage.LAYOUT),
        new LawnStripTable(),
        new TapeTable(),
        new AccessRules.Routes(),
        new PlanTable("level-beds", GroundTables::levelBeds, OnPaper.ALWAYS, SheetPage.GRADING),
        new PlanTable("earth", GroundTables::earth, OnPaper.ALWAYS, SheetPage.GRADING),
        new PlanTable("swales", GroundTables::swales, OnPaper.ALWAYS, SheetPage.GRADING));
  }

  @Override
  public List<SheetMaker> sheets() {
    return List.of(new LayoutSheet(), new GradingSheet());
  }

  @Override
  public List<Caution> cautions(Plan plan, Facts facts) {
    return SiteCautions.of(plan);
  }

  /** The readings of the tapes; on sheets in a form that a crew carries. */
  private static final class TapeTable implements TableMaker {
    @Override
    public String id() {
      return SettingOutTable.ID;
    }

    @Override
    public OnPaper onPaper() {
      return OnPaper.ALWAYS;
    }

    @Override
    public Set<SheetUse> uses() {
      return Set.of(SheetPage.LAYOUT, WorkPhase.STAKE);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      return SettingOutTable.of(plan);
    }

    @Override
    public Table forSheet(Plan plan, Facts facts, Table made) {
      return SettingOutTable.toCarry(plan);
    }
  }

  /** A table made from the plan alone. */
  private record PlanTable(
      String id, Function<Plan, Table> body, OnPaper onPaper, Set<SheetPage> uses)
      implements TableMaker {
    /** A table for the desk. */
    PlanTable(String id, Function<Plan, Table> body) {
      this(id, body, OnPaper.REPORT, Set.of());
    }

    PlanTable(String id, Function<Plan, Table> body, OnPaper onPaper, SheetPage page) {
      this(id, body, onPaper, Set.of(page));
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      return body.apply(plan);
    }
  }
}
