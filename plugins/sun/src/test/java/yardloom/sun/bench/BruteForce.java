package yardloom.sun.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.position.LibraryPositions;

/**
 * Direct hours by the plainest means: for each cell and each moment of the year a ray to the sun,
 * tried against every obstacle. Written apart from the engine, in plan coordinates and clock time,
 * with the sun's true position at each moment.
 */
final class BruteForce {
  /** The share of light that a ray keeps at an obstacle. */
  interface Blocker {
    boolean hit(double x, double y, double dx, double dy, double dz);

    double passes(int month);

    /** The height of its top above a place, 0 beside it. */
    double heightM(double x, double y);
  }

  record Box(double x0, double y0, double x1, double y1, double topM) implements Blocker {
    @Override
    public boolean hit(double x, double y, double dx, double dy, double dz) {
      double from = 0;
      double to = topM / dz;
      if (dx != 0) {
        double a = (x0 - x) / dx;
        double b = (x1 - x) / dx;
        from = Math.max(from, Math.min(a, b));
        to = Math.min(to, Math.max(a, b));
      } else if (x < x0 || x > x1) {
        return false;
      }
      if (dy != 0) {
        double a = (y0 - y) / dy;
        double b = (y1 - y) / dy;
        from = Math.max(from, Math.min(a, b));
        to = Math.min(to, Math.max(a, b));
      } else if (y < y0 || y > y1) {
        return false;
      }
      return from < to;
    }

    @Override
    public double heightM(double x, double y) {
      return x0 <= x && x < x1 && y0 <= y && y < y1 ? topM : 0;
    }

    @Override
    public double passes(int month) {
      return 0;
    }
  }

  record Crown(double cx, double cy, double cz, double radiusM, double halfM, double[] shares)
      implements Blocker {
    @Override
    public boolean hit(double x, double y, double dx, double dy, double dz) {
      double squash = radiusM / halfM;
      double ox = x - cx;
      double oy = y - cy;
      double oz = -cz * squash;
      double ez = dz * squash;
      double a = dx * dx + dy * dy + ez * ez;
      double b = ox * dx + oy * dy + oz * ez;
      double c = ox * ox + oy * oy + oz * oz - radiusM * radiusM;
      return c <= 0 || b < 0 && b * b >= a * c;
    }

    @Override
    public double heightM(double x, double y) {
      double part = 1 - ((x - cx) * (x - cx) + (y - cy) * (y - cy)) / (radiusM * radiusM);
      return part > 0 ? cz + halfM * Math.sqrt(part) : 0;
    }

    @Override
    public double passes(int month) {
      return shares[month];
    }
  }

  /** The sun at one moment: direction east, north, up, and the month. */
  private record Moment(double east, double north, double up, int month) {}

  private final List<Moment> moments = new ArrayList<>();
  private final Blocker[] blockers;
  private final double stepHours;

  BruteForce(
      double latitudeDeg, double longitudeDeg, int year, int stepMinutes, List<Blocker> all) {
    blockers = all.toArray(new Blocker[0]);
    stepHours = stepMinutes / 60.0;
    Instant start =
        LocalDate.of(year, 1, 1)
            .atStartOfDay()
            .toInstant(ZoneOffset.UTC)
            .minusSeconds(Math.round(longitudeDeg * 240));
    for (int day = 0; day < 365; day++) {
      int month = LocalDate.ofYearDay(year, day + 1).getMonthValue() - 1;
      for (int step = 0; step < 1440 / stepMinutes; step++) {
        Instant at = start.plusSeconds(day * 86_400L + (long) ((step + 0.5) * stepMinutes * 60));
        LibraryPositions.Place sun = LibraryPositions.geometric(at, latitudeDeg, longitudeDeg);
        if (sun.elevationDeg() > 0) {
          double e = Math.toRadians(sun.elevationDeg());
          double a = Math.toRadians(sun.azimuthDeg());
          moments.add(
              new Moment(Math.cos(e) * Math.sin(a), Math.cos(e) * Math.cos(a), Math.sin(e), month));
        }
      }
    }
  }

  int rays() {
    return moments.size();
  }

  /** Hours of the whole year at a place. */
  double yearHours(double x, double y) {
    double sum = 0;
    for (Moment m : moments) {
      double light = 1;
      for (Blocker b : blockers) {
        double passes = b.passes(m.month());
        if (b.hit(x, y, m.east(), m.north(), m.up())) {
          light *= passes;
          if (light == 0) {
            break;
          }
        }
      }
      sum += light;
    }
    return sum * stepHours;
  }

  /** Hours of the whole year at every {@code stride}-th cell, on all cores. */
  double[] yearHours(CellGrid grid, int stride) {
    return IntStream.range(0, grid.cells() / stride)
        .parallel()
        .mapToDouble(
            k -> {
              int i = k * stride;
              return yearHours(grid.xM(i % grid.columns()), grid.yM(i / grid.columns()));
            })
        .toArray();
  }
}
