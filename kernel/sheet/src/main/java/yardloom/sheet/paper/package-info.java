/**
 * Paper: sizes, scales, millimetres, and what is drawn there. Start with {@link
 * yardloom.sheet.paper.Ink}.
 */
package yardloom.sheet.paper;
