/**
 * Physical quantities and money: one SI double each, finite by construction.
 *
 * <p>A signature says {@code Length}, never {@code double}. Inside numeric loops code works on
 * plain doubles whose names carry the unit ({@code depthM}, {@code litresPerDay}). Conversion
 * factors live in one place, {@link yardloom.kernel.unit.Unit}. Start with {@link
 * yardloom.kernel.unit.Length}.
 */
package yardloom.kernel.unit;
