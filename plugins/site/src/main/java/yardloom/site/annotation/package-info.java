/**
 * Names and dimensions on the drawing. Start with {@link yardloom.site.annotation.LabelPainter}.
 */
package yardloom.site.annotation;
