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
 * @param own parts of the plan's own, one for each place
 */
public record HeadAssembly(
    Pressure regulator, Backflow backflow, boolean hasTimer, List<OwnPart> own) {
  /** Said by {@code headAssembly}. */
  public static final AttributeKey<HeadAssembly> KEY =
      new AttributeKey<>("water.head", HeadAssembly.class);

  public HeadAssembly {
    own = List.copyOf(own);
  }

  /** What keeps garden water out of the drinking water. */
  public enum Backflow {
    VACUUM_BREAKER,
    DOUBLE_CHECK,
    REDUCED_PRESSURE
  }

  /** In the middle of what is usual, 20 to 30 psi. */
  static final HeadAssembly USUAL =
      new HeadAssembly(Pressure.psi(25), Backflow.VACUUM_BREAKER, true, List.of());

  /** That of the plan, or the usual one, with the parts that the plan names. */
  public static HeadAssembly of(Plan plan) {
    HeadAssembly said = plan.said(KEY).map(e -> e.value()).orElse(USUAL);
    List<OwnPart> own = new ArrayList<>();
    // A later file goes before an earlier one, as a plan does before the region it includes.
    plan.attributes()
        .all(OwnPart.KEY)
        .forEach(
            e -> {
              own.removeIf(e.value()::isSame);
              own.add(e.value());
            });
    return new HeadAssembly(said.regulator, said.backflow, said.hasTimer, own);
  }

  /**
   * From the tap on, the last two once in each zone: a regulator without a spring against standing
   * pressure works behind the valve. A tank's water needs no regulator and no backflow preventer.
   */
  public List<HeadPart> parts(boolean isTank) {
    List<HeadPart> parts = new ArrayList<>();
    for (String name : names(isTank)) {
      parts.add(
          own.stream()
              .filter(o -> !o.isAdded() && o.at().equals(name))
              .map(OwnPart::part)
              .findFirst()
              .orElseGet(() -> HeadPart.of(name)));
      own.stream()
          .filter(o -> o.isAdded() && o.at().equals(name))
          .map(OwnPart::part)
          .forEach(parts::add);
    }
    return parts;
  }

  /** Parts of the plan's own whose place this assembly lacks. */
  public List<OwnPart> unused(boolean isTank) {
    return own.stream().filter(o -> !names(isTank).contains(o.at())).toList();
  }

  private List<String> names(boolean isTank) {
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
    return names;
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
