package yardloom.facts.mulch;

import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * What is barrowed from the heap to one place: a layer of a surface, or loose bulk.
 *
 * @param to how tables call the place
 * @param from the spot on which the heap lies
 * @param item what is carried, as the bill has it
 * @param phase when it is laid
 * @param way where the barrows go, from the heap to the middle of the surface
 * @param by what the barrows roll on
 * @param oneWay the length of the way; off the paths times the detour
 * @param walk all ways, there and back
 */
public record Haul(
    String to,
    String from,
    String item,
    WorkPhase phase,
    Derived<Volume> volume,
    Derived<Integer> trips,
    Line way,
    By by,
    Derived<Length> oneWay,
    Derived<Length> walk) {

  /** What the barrows roll on. */
  public enum By {
    PATHS("paths"),
    OPEN_GROUND("open ground"),
    OVER_BEDS("beds, on boards"),
    NO_WAY("no way");

    private final String title;

    By(String title) {
      this.title = title;
    }

    /** How tables call it. */
    public String title() {
      return title;
    }
  }
}
