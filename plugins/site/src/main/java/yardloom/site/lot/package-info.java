/** The lot, its sides and its areas. Start with {@link yardloom.site.lot.LotWords}. */
package yardloom.site.lot;
