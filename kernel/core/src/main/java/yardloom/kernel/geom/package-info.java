/**
 * Plane geometry of a yard, in metres near the local origin, x to the plan's right, y up the plan.
 *
 * <p>The only package that calls JTS buffer, overlay and repair. Everybody else receives {@link
 * yardloom.kernel.geom.Shape}s, which are valid by construction. Start with {@code Shape}.
 */
package yardloom.kernel.geom;
