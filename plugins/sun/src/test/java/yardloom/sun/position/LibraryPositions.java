package yardloom.sun.position;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/** The position that the library gives, to hold the program's own way to the figures against. */
public final class LibraryPositions {
  private LibraryPositions() {}

  /**
   * A place on the sky in degrees.
   *
   * @param azimuthDeg clockwise from true north, 0 to 360
   * @param elevationDeg above the level horizon
   */
  public record Place(double azimuthDeg, double elevationDeg) {}

  /** The sun's centre without refraction. */
  public static Place geometric(Instant at, double latitudeDeg, double longitudeDeg) {
    ZonedDateTime utc = at.atZone(ZoneOffset.UTC);
    SolarPosition position =
        SPA.calculateSolarPositionWithTimeDependentParts(
            latitudeDeg,
            longitudeDeg,
            0,
            SPA.calculateSpaTimeDependentParts(utc, DeltaT.estimate(utc.toLocalDate())));
    return new Place(position.azimuth(), 90 - position.zenithAngle());
  }
}
