package yardloom.planting.suit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.planting.suit.rule.AcidityRule;
import yardloom.planting.suit.rule.Candidate;
import yardloom.planting.suit.rule.ChillRule;
import yardloom.planting.suit.rule.ColdRule;
import yardloom.planting.suit.rule.DrainageRule;
import yardloom.planting.suit.rule.HazardRule;
import yardloom.planting.suit.rule.HeatRule;
import yardloom.planting.suit.rule.JugloneNearRule;
import yardloom.planting.suit.rule.LightRule;
import yardloom.planting.suit.rule.LineRule;
import yardloom.planting.suit.rule.LocalListRule;
import yardloom.planting.suit.rule.PartnerRule;
import yardloom.planting.suit.rule.Reason;
import yardloom.planting.suit.rule.SuitRule;
import yardloom.planting.suit.rule.WaterRule;
import yardloom.planting.suit.rule.Yard;

/** All rules, in the order in which a gardener asks. */
public final class SuitRules {
  /** The rules. */
  public static final List<SuitRule> ALL =
      List.of(
          new ColdRule(),
          new HeatRule(),
          new ChillRule(),
          new LightRule(),
          new AcidityRule(),
          new DrainageRule(),
          new WaterRule(),
          new PartnerRule(),
          new JugloneNearRule(),
          new LineRule(),
          new LocalListRule(),
          new HazardRule());

  private SuitRules() {}

  /** Why a plant does not simply fit; the worst first, else in the order of the rules. */
  public static List<Reason> judge(Candidate plant, Yard yard) {
    List<Reason> reasons = new ArrayList<>();
    for (SuitRule rule : ALL) {
      rule.judge(plant, yard).ifPresent(reasons::add);
    }
    reasons.sort(Comparator.comparing(Reason::suits).reversed());
    return List.copyOf(reasons);
  }
}
