package yardloom.sheet.svg;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import yardloom.sheet.paper.Ink;

/**
 * The path data of tracks that were looked through for arcs, which takes most of the time in which
 * a sheet is written. For a plan that is drawn again after each edit; several threads may ask.
 */
public final class ArcMemory {
  private Map<Ink.Track, String> before = Map.of();
  private Map<Ink.Track, String> now = new ConcurrentHashMap<>();

  /** Another set of sheets begins; what neither it nor the one before asks for is forgotten. */
  public void next() {
    before = now;
    now = new ConcurrentHashMap<>();
  }

  String data(Ink.Track track) {
    if (!PathData.mayHoldArcs(track)) {
      return PathData.of(track);
    }
    String known = now.get(track);
    if (known == null) {
      known = before.get(track);
      known = known == null ? PathData.of(track) : known;
      now.put(track, known);
    }
    return known;
  }
}
