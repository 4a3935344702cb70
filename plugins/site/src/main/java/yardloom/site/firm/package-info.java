/**
 * What a firm brings to every set: its details, and how its drawings look. A firm keeps such lines
 * in a file that each plan includes. Start with {@link yardloom.site.firm.ThemeWords}.
 */
package yardloom.site.firm;
