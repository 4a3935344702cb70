/**
 * Writes composed sheets as SVG 1.1 at true size: one user unit is one millimetre on paper. Start
 * with {@link yardloom.sheet.svg.SvgWriter}.
 */
package yardloom.sheet.svg;
