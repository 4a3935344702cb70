/**
 * What of the plan casts shade, and how much light passes it? Start with {@link
 * yardloom.sun.obstacle.SiteObstacles}.
 */
package yardloom.sun.obstacle;
