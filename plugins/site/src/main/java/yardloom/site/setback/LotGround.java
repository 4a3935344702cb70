package yardloom.site.setback;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yardloom.kernel.geom.Partition;
import yardloom.kernel.geom.Setbacks;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.vocab.Choices;
import yardloom.site.tree.TreeRootRules;

/**
 * The ground of the lot, divided by what may be done on it. The parts count every square metre once
 * and add up to the lot.
 */
public final class LotGround {
  private LotGround() {}

  /**
   * Why ground may not be built on, and last the ground that may: keep-outs by reason, the
   * clearances of lines, rules that bar buildings, then the setback of each side, and last setbacks
   * that hold only at some heights. Ground on which something else may not stand, such as beds near
   * a well or digging at roots, comes after these and says so. What stands on the lot already is no
   * reason here.
   */
  public static List<Partition.Part> byReason(Plan plan, Lot lot) {
    List<Partition.Claim> claims = new ArrayList<>();
    for (Element.KeepOut keepOut : plan.all(Element.KeepOut.class)) {
      claims.add(
          new Partition.Claim(keepOut.id().name() + ": " + keepOut.reason(), keepOut.shape()));
    }
    for (Element.Utility utility : plan.all(Element.Utility.class)) {
      claims.add(
          new Partition.Claim(
              utility.id().name() + ": clearance of " + utility.carries(), utility.shape()));
    }
    for (var rule : plan.attributes().all(Restriction.KEY)) {
      if (rule.value().bars().contains(Restriction.Subject.BUILDINGS)) {
        claims.add(new Partition.Claim(rule.value().reason(), rule.value().ground()));
      }
    }
    for (Setbacks.Taken taken : Setbacks.taken(lot.shape(), lot.setbackSides())) {
      claims.add(
          new Partition.Claim(SetbackGround.name(plan, lot, taken.side().name()), taken.ground()));
    }
    for (SetbackGround.Banded banded : SetbackGround.banded(plan, lot)) {
      claims.add(new Partition.Claim(SetbackGround.name(plan, banded.rule()), banded.ground()));
    }
    List<Partition.Claim> forOthers = barredForOthers(plan);
    claims.addAll(forOthers);
    String rest = forOthers.isEmpty() ? "may be built on" : "may be built and planted on";
    return Partition.of(lot.shape(), claims, rest);
  }

  /** Ground that may be built on as far as rules go, but not planted or dug. */
  private static List<Partition.Claim> barredForOthers(Plan plan) {
    List<Partition.Claim> claims = new ArrayList<>();
    for (var entry : plan.attributes().all(Restriction.KEY)) {
      Restriction rule = entry.value();
      if (!rule.bars().contains(Restriction.Subject.BUILDINGS)) {
        String what =
            rule.bars().stream()
                .sorted()
                .map(Choices::text)
                .collect(Collectors.joining(", ", " (not for ", ")"));
        claims.add(new Partition.Claim(rule.reason() + what, rule.ground()));
      }
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      TreeRootRules.zone(plan, tree)
          .ifPresent(
              zone ->
                  claims.add(new Partition.Claim("roots of " + tree.id() + " (no digging)", zone)));
    }
    return claims;
  }
}
