package yardloom.water.head;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.vocab.Choices;

/**
 * The parts between tap and lines, in the order in which water passes them.
 *
 * @param regulator the pressure that it lets through
 */
public record HeadAssembly(Pressure regulator, Backflow backflow, boolean hasTimer) {
  /** Said by {@code headAssembly}. */
  public static final AttributeKey<HeadAssembly> KEY =
      new AttributeKey<>("water.head", HeadAssembly.class);

  /** What keeps garden water out of the drinking water. */
  public enum Backflow {
    VACUUM_BREAKER,
    DOUBLE_CHECK,
    REDUCED_PRESSURE
  }

  /** In the middle of what is usual, 20 to 30 psi. */
  static final HeadAssembly USUAL =
      new HeadAssembly(Pressure.psi(25), Backflow.VACUUM_BREAKER, true);

  /** That of the plan, or the usual one. */
  public static HeadAssembly of(Plan plan) {
    return plan.said(KEY).map(e -> e.value()).orElse(USUAL);
  }

  /**
   * From the tap on, the last two once in each zone: a regulator without a spring against standing
   * pressure works behind the valve. A tank's water needs no regulator and no backflow preventer.
   */
  public List<HeadPart> parts(boolean isTank) {
    List<String> names = new ArrayList<>();
    names.add("shut-off valve");
    if (hasTimer) {
      names.add("timer");
    }
    if (!isTank) {
      names.add(Choices.text(backflow));
    }
    names.add("filter");
    names.add("zone valve");
    if (!isTank) {
      names.add("regulator");
    }
    return names.stream().map(HeadPart::of).toList();
  }

  /**
   * A part while water runs.
   *
   * @param takes what it takes of the pressure
   * @param behind what is left behind it; empty where nothing is known of the tap
   */
  public record Stage(HeadPart part, Pressure takes, Optional<Pressure> behind) {}

  /**
   * All parts while so much runs. Behind the regulator there is never more than it lets through;
   * where nothing is known of the tap it is taken to hold.
   */
  public List<Stage> stages(Optional<Pressure> tap, Flow flow, boolean isTank) {
    List<Stage> stages = new ArrayList<>();
    Optional<Pressure> left = tap;
    for (HeadPart part : parts(isTank)) {
      Pressure takes = part.loss(flow);
      left = left.map(p -> p.minus(takes));
      if (part.kind() == HeadPart.Kind.REGULATOR) {
        left = Optional.of(left.orElse(regulator).min(regulator));
      }
      stages.add(new Stage(part, takes, left));
    }
    return stages;
  }

  /** The pressure behind the last of them; a tank's own is always known. */
  public Pressure behind(Optional<Pressure> tap, Flow flow, boolean isTank) {
    List<Stage> stages = stages(tap, flow, isTank);
    return stages.get(stages.size() - 1).behind().orElseThrow();
  }
}
