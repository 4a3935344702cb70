/**
 * Writes composed sheets as SVG 1.1 at true size: one user unit is one millimetre on paper. Start
 * with {@link yardloom.kernel.svg.SvgWriter}.
 */
package yardloom.kernel.svg;
