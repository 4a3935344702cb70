/**
 * What solids stand on the ground: walls, roofs with their eaves, crowns, the ground's own plane,
 * and the outlines of shade they throw. Start with {@link yardloom.sun.body.PlanBodies}.
 */
package yardloom.sun.body;
