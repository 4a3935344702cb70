/**
 * Where may pipe lie, and which tree of trenches joins the tap with all beds? Start with {@link
 * yardloom.water.route.LineGround}.
 */
package yardloom.water.route;
