package yardloom.facts;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;

/**
 * The soil of the yard.
 *
 * @param texture the class in words, such as {@code clay loam}
 * @param heavy whether it drains slowly (clay loams and clays)
 * @param depth the depth that roots use
 * @param available share of soil volume that holds water for plants, rock counted
 * @param stored water for plants over the whole depth
 * @param intakePerHour depth of water that the soil takes in an hour when it is wet, for design;
 *     empty where nothing is known
 */
public record SoilProfile(
    String texture,
    boolean heavy,
    Length depth,
    Derived<Double> available,
    Derived<Length> stored,
    Optional<Derived<Length>> intakePerHour) {}
