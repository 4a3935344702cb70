package yardloom.sun.bed;

import java.util.List;
import yardloom.kernel.fact.FactKey;
import yardloom.sun.light.LightScheme;

/**
 * The sun of all beds of a plan.
 *
 * @param seasonText the days of the season in words
 * @param method how it was worked out, for notes
 */
public record BedSuns(
    List<BedSun> beds, BedSun open, LightScheme scheme, String seasonText, String method) {
  /** The plugin's own fact; what other plugins need of it is in the shared facts. */
  public static final FactKey<BedSuns> KEY =
      FactKey.one("sun.beds", BedSuns.class).called("sun at the beds");

  public BedSuns {
    beds = List.copyOf(beds);
  }
}
