package yardloom.materials.model;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * What is barrowed from the heap to one surface.
 *
 * @param way where the barrows go, from the heap to the middle of the surface
 * @param oneWay the length of the way
 * @param walk all ways, there and back
 */
public record Haul(
    Surface to,
    Material material,
    Derived<Volume> volume,
    Derived<Integer> trips,
    Line way,
    Derived<Length> oneWay,
    Derived<Length> walk) {}
