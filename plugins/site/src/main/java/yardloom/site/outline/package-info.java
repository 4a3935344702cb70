/**
 * The plan and its shapes: what every script begins with. Start with {@link
 * yardloom.site.outline.PlanWords}.
 */
package yardloom.site.outline;
