/**
 * As what are plants bought, in which size, how long does one take to plant and what is it called
 * in price books? Minutes of one person for one piece. Start at {@link
 * yardloom.planting.stock.StockForms}.
 */
package yardloom.planting.stock;
