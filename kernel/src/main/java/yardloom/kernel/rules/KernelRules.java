package yardloom.kernel.rules;

import java.util.List;
import yardloom.kernel.check.Check;

/** All checks that the kernel itself brings. */
public final class KernelRules {
  private KernelRules() {}

  /** The checks, by id. */
  public static List<Check> checks() {
    return List.of(
        new ShapeRule("kernel.access", AccessRules::access),
        new ShapeRule("kernel.bed-outside-lot", LotRules::bedOutsideLot),
        new ShapeRule("kernel.bed-overlap", BedRules::overlaps),
        new ShapeRule("kernel.bed-reach", BedRules::reach),
        new ShapeRule("kernel.building-outside-lot", LotRules::buildingOutsideLot),
        new ShapeRule("kernel.deed", SurveyRules::deeds),
        new ShapeRule("kernel.drain-field", DrainFieldRules::near),
        new ShapeRule("kernel.fall-from-house", GroundRules::fallFromHouse),
        new ShapeRule("kernel.keep-out", BedRules::keepOut),
        new ShapeRule("kernel.path-building", PathRules::throughBuilding),
        new ShapeRule("kernel.path-slope", GroundRules::pathSlope),
        new ShapeRule("kernel.levels", LevelRules::levels),
        new ShapeRule("kernel.path-passing", PathRules::passing),
        new ShapeRule("kernel.path-turning", PathRules::turning),
        new ShapeRule("kernel.path-width", PathRules::width),
        new ShapeRule("kernel.restriction", RestrictionRules::restrictions),
        new ShapeRule("kernel.setback", SetbackRules::within),
        new ShapeRule("kernel.setback-room", SetbackRules::room),
        new ShapeRule("kernel.side-role", LotRules::sideRoles),
        new ShapeRule("kernel.strip-gain", BedRules::stripGains),
        new ShapeRule("kernel.swale", GroundRules::swales),
        new ShapeRule("kernel.ties", SurveyRules::ties),
        new ShapeRule("kernel.tree-roots", TreeRootRules::treeRoots),
        new ShapeRule("kernel.utility-clearance", BedRules::utilities),
        new ShapeRule("kernel.way-outside-lot", LotRules::wayOutsideLot));
  }
}
