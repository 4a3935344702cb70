/**
 * What the soil is, what to add to it, and what holds where the yard lies. Start with {@link
 * yardloom.soil.SoilPlugin}.
 */
package yardloom.soil;
