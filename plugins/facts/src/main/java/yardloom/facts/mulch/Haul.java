package yardloom.facts.mulch;

import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * What is barrowed from the heap to one surface for one of its layers.
 *
 * @param phase when it is laid
 * @param way where the barrows go, from the heap to the middle of the surface
 * @param by whether paths lead there
 * @param oneWay the length of the way; over open ground times the detour
 * @param walk all ways, there and back
 */
public record Haul(
    Surface to,
    Material material,
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
    OPEN_GROUND("open ground");

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
