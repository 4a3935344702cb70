package yardloom.sun.light.formula;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;

/**
 * Radiation of chosen days at open level ground, clear or measured, cut into the engine's columns
 * of hour angle, and the daily light that a shaded place gets of it.
 *
 * <p>References: see {@link ClearSkyHour}, {@link DiffuseShare} and {@link DailyLight}.
 */
public final class LightOfDays {
  private final double[][] beam;
  private final double[] diffuse;
  private final double[] beamDay;

  private LightOfDays(double[][] beam, double[] diffuse) {
    this.beam = beam;
    this.diffuse = diffuse;
    beamDay = Arrays.stream(beam).mapToDouble(b -> Arrays.stream(b).sum()).toArray();
  }

  /**
   * Days under a clear sky.
   *
   * @param skies the air of each day
   * @param columnsPerDay as of the engine
   * @param days days of the year from 0
   */
  public LightOfDays(
      List<ClearSkyHour> skies, double latitudeRad, SunYear year, int columnsPerDay, int... days) {
    beam = new double[days.length][columnsPerDay];
    diffuse = new double[days.length];
    beamDay = new double[days.length];
    double stepHours = 24.0 / columnsPerDay;
    for (int d = 0; d < days.length; d++) {
      double declination = StrictMath.atan(year.tan(days[d]));
      for (int j = 0; j < columnsPerDay; j++) {
        double hourAngle = ((j + 0.5) / columnsPerDay * 2 - 1) * StrictMath.PI;
        double elevation = DayLength.elevation(latitudeRad, declination, hourAngle);
        ClearSkyHour.Hour hour = skies.get(d).hour(StrictMath.sin(elevation));
        beam[d][j] = hour.beam() * stepHours;
        diffuse[d] += hour.diffuse() * stepHours;
        beamDay[d] += beam[d][j];
      }
    }
  }

  /**
   * The same days with measured global radiation: its direct part keeps the course of the clear
   * day, its diffuse part is {@link DiffuseShare}'s. Days without any clear sky stay as they are.
   *
   * @param global MJ per square metre of each day
   * @param aboveAir MJ per square metre of each day above the air
   * @param sunsetRad hour angle of sunset of each day
   */
  public LightOfDays measured(double[] global, double[] aboveAir, double[] sunsetRad) {
    double[][] nowBeam = new double[beam.length][];
    double[] nowDiffuse = diffuse.clone();
    for (int d = 0; d < beam.length; d++) {
      nowBeam[d] = beam[d].clone();
      if (beamDay[d] > 0 && aboveAir[d] > 0) {
        double share = DiffuseShare.of(global[d] / aboveAir[d], sunsetRad[d]);
        nowDiffuse[d] = global[d] * share;
        double scale = global[d] * (1 - share) / beamDay[d];
        for (int j = 0; j < nowBeam[d].length; j++) {
          nowBeam[d][j] *= scale;
        }
      }
    }
    return new LightOfDays(nowBeam, nowDiffuse);
  }

  /**
   * What arrives in a day at a place, MJ per square metre.
   *
   * @param direct what arrives of it
   * @param diffuse of the whole sky
   * @param skySeen share of the sky that is seen
   */
  public record Arriving(double direct, double diffuse, double skySeen) {
    /** Photosynthetic light, mol per square metre and day. */
    public double mol() {
      return DailyLight.shaded(direct, diffuse, skySeen);
    }
  }

  /** What arrives on each of the days at the place a looker is turned to. */
  public List<Arriving> arriving(SunEngine.Looker looker, double[] skyViewByDay) {
    return IntStream.range(0, diffuse.length)
        .mapToObj(d -> new Arriving(looker.beam(d, beam[d]), diffuse[d], skyViewByDay[d]))
        .toList();
  }
}
