package yardloom.kernel.rules;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** All checks that the kernel itself brings, and the cautions that its elements call for. */
public final class KernelRules {
  private KernelRules() {}

  /** The checks, by id. */
  public static List<Check> checks() {
    return List.of(
        new ShapeRule("kernel.bed-outside-lot", LotRules::bedOutsideLot),
        new ShapeRule("kernel.bed-overlap", BedRules::overlaps),
        new ShapeRule("kernel.bed-reach", BedRules::reach),
        new ShapeRule("kernel.building-outside-lot", LotRules::buildingOutsideLot),
        new ShapeRule("kernel.keep-out", BedRules::keepOut),
        new ShapeRule("kernel.path-width", PathRules::width),
        new ShapeRule("kernel.setback", LotRules::inSetback),
        new ShapeRule("kernel.setback-room", LotRules::setbackRoom),
        new ShapeRule("kernel.side-role", LotRules::sideRoles),
        new ShapeRule("kernel.strip-gain", BedRules::stripGains),
        new ShapeRule("kernel.utility-clearance", BedRules::utilities),
        new ShapeRule("kernel.way-outside-lot", LotRules::wayOutsideLot));
  }

  /** What the sheet of any plan, and of this one, must warn of. */
  public static List<Caution> cautions(Plan plan) {
    List<Caution> cautions = new ArrayList<>();
    boolean digs =
        !plan.all(Element.Bed.class).isEmpty() || !plan.all(Element.Tree.class).isEmpty();
    if (digs || !plan.all(Element.Utility.class).isEmpty()) {
      cautions.add(
          new Caution(
              "Before any digging have buried lines located and marked (in the US call 811 some days"
                  + " ahead). Lines on this plan are only where somebody believes them to be.",
              Sources.BURIED_LINES));
    }
    if (plan.lot().isPresent()) {
      cautions.add(
          new Caution(
              "Lot lines and setbacks are as stated in the plan. This is no survey; boundaries are"
                  + " settled by a licensed surveyor and setbacks by the local code.",
              Sources.PLAN));
    }
    return cautions;
  }
}
