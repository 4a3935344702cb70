/** Beds put together by flow and need. Start with {@link yardloom.water.zone.formula.Zoning}. */
package yardloom.water.zone.formula;
