/**
 * The form of the ground: levels, contours, slopes, swales, earth to move. Start with {@link
 * yardloom.site.ground.LevelWords}.
 */
package yardloom.site.ground;
