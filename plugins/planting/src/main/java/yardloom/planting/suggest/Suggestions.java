package yardloom.planting.suggest;

import java.util.List;
import java.util.OptionalInt;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;

/** Sets of kinds for the beds that ask for some. */
public record Suggestions(List<Bed> beds) {
  /** The plugin's own fact. */
  public static final FactKey<Suggestions> KEY =
      FactKey.one("planting.suggestions", Suggestions.class).called("suggested plants");

  public Suggestions {
    beds = List.copyOf(beds);
  }

  /**
   * One bed.
   *
   * @param looked how many kinds suit it
   * @param tender whether kinds that need mild winters were looked at: a hardiness zone is known,
   *     or that frost does not come
   * @param sets the best, and the best without its kinds; empty where no set obeys all rules
   */
  public record Bed(
      ElementId in, Wish wish, int looked, boolean monthsKnown, boolean tender, List<Set> sets) {
    public Bed {
      sets = List.copyOf(sets);
    }
  }

  /**
   * One set.
   *
   * @param exact whether no better one exists
   */
  public record Set(List<Line> lines, boolean exact) {
    public Set {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One kind of a set.
   *
   * @param count how many stand in its equal part of the bed; empty for what is sown in drills
   * @param why what it brings, and what it alone brings
   */
  public record Line(String plant, OptionalInt count, String harvest, String uses, String why) {}
}
