/**
 * Outlines from files and for other maps: GeoJSON (RFC 7946, WGS 84 longitude and latitude in
 * degrees) and well-known text (plan metres or feet). Start with {@link
 * yardloom.program.sitefile.GeoOutline} for reading and {@link
 * yardloom.program.sitefile.GeoJsonWriter} for writing.
 *
 * <p>Between degrees and plan metres stands {@link yardloom.program.sitefile.LocalPlane}, a
 * transverse Mercator plane that touches the globe at the plan's origin. None of this is a survey.
 */
package yardloom.program.sitefile;
