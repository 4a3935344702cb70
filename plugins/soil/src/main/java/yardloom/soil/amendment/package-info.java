/**
 * How much lime, sulfur, nitrogen and compost the beds take. Start with {@link
 * yardloom.soil.amendment.AmendmentCalculator}.
 */
package yardloom.soil.amendment;
