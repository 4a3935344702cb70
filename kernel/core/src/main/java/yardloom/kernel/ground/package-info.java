/**
 * The shape of the ground: spot levels, the surface between them, slopes, contours, earthwork.
 *
 * <p>Levels are heights above any datum the plan keeps to; slopes are ratios (0.05 is 5 %). Outside
 * the measured points nothing is known, and nothing is guessed. Start with {@link
 * yardloom.kernel.ground.Surface}.
 */
package yardloom.kernel.ground;
