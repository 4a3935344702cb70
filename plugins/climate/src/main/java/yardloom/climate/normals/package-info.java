/**
 * Which monthly normals of rain and temperature hold for the yard? From a catalogue by name, or as
 * the plan states them. Start with {@link yardloom.climate.normals.NormalsWords}.
 */
package yardloom.climate.normals;
