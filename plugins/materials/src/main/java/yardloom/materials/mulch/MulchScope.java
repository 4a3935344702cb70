package yardloom.materials.mulch;

import java.util.EnumMap;
import java.util.Map;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.kernel.vocab.Scope;

/** The block in which the sheet mulch of the plan is described. */
public final class MulchScope extends Scope {
  /** What the block has said so far; {@code null} where it said nothing. */
  static final class Given {
    private final Map<LengthSetting, Length> lengths = new EnumMap<>(LengthSetting.class);
    private Number allowance;
    private Number settling;
    private Volume minimumLoad;
    private Volume pocket;
    private boolean chipsOnly;

    MulchSettings settings(SourceRef place) {
      return MulchSettings.of(lengths, allowance, settling, minimumLoad, pocket, chipsOnly, place);
    }
  }

  private final Given given;

  MulchScope(Given given, SourceRef place) {
    super(place);
    this.given = given;
  }

  void set(LengthSetting setting, Length value) {
    if (value != null && given.lengths.put(setting, value) != null) {
      throw new PlanException(
          ProblemCode.DUPLICATE, place(), setting.word() + " is already given; say it once");
    }
  }

  void settling(Number share) {
    given.settling = share == null ? given.settling : share;
  }

  void pocket(Volume each) {
    given.pocket = each == null ? given.pocket : each;
  }

  void chipsOnly() {
    given.chipsOnly = true;
  }

  void ordering(Number allowance, Volume minimumLoad) {
    given.allowance = allowance;
    given.minimumLoad = minimumLoad;
  }

  @Override
  public MulchScope at(SourceRef newPlace) {
    return new MulchScope(given, newPlace);
  }
}
