package yardloom.kernel.ground;

import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/** A point of the ground with its level. */
public record Spot(Point at, Length level) {}
