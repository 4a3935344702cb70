package yardloom.sun.neighbour;

import java.util.List;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Length;

/**
 * Direct sun that what is proposed would take; only where it takes any.
 *
 * @param beds by each thing proposed from each bed, in the order of ids and beds
 * @param neighbours by all of it together from each neighbour's house and each bed outside the lot
 */
public record LostSun(List<OfBed> beds, List<OfNeighbour> neighbours) {
  public static final FactKey<LostSun> KEY =
      FactKey.one("sun.lost", LostSun.class).called("sun that new things take");

  public LostSun {
    beds = List.copyOf(beds);
    neighbours = List.copyOf(neighbours);
  }

  /** Mean hours a day of the season on a bed, without and with one thing. */
  public record OfBed(ElementId by, Element.Bed bed, double without, double with) {
    public double lost() {
      return without - with;
    }
  }

  /**
   * The point and month in which most is lost: hours on the month's mean day, now and then.
   *
   * @param month 0 for January to 11
   * @param above height of the point above the ground
   */
  public record OfNeighbour(
      Element element, Point at, Length above, int month, double now, double then) {
    public double lost() {
      return now - then;
    }
  }
}
