/**
 * Outlines on the globe: GeoJSON into plan points and plans into GeoJSON.
 *
 * <p>Positions are WGS 84 longitude and latitude in degrees; the plan is a transverse Mercator
 * plane in metres that touches the globe at the plan's origin. Start with {@link
 * yardloom.scripts.site.LocalPlane}.
 */
package yardloom.scripts.site;
