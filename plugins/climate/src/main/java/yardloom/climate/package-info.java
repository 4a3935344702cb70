/**
 * What the weather of the yard's place is like: normals, records, frost and cold, and what the air
 * takes from the soil. Start with {@link yardloom.climate.ClimatePlugin}, which lists what is given
 * and shown; each package answers one question.
 */
package yardloom.climate;
