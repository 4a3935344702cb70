package yardloom.facts;

import java.util.Optional;
import yardloom.kernel.fact.Derived;

/**
 * How acid the soil is by its test, 3 to 10.
 *
 * @param found pH as it is
 * @param wanted pH that the plan means to bring it to, where it says so
 */
public record SoilAcidity(Derived<Double> found, Optional<Double> wanted) {}
