/**
 * What a regional file says, and which rules and checks hold where the yard lies. Start with {@link
 * yardloom.soil.region.RegionWords}.
 */
package yardloom.soil.region;
