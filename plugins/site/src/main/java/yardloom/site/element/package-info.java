/**
 * What the rooms of this plugin share: a rule over the plan, the drawing of one kind, how values
 * are shown. Start with {@link yardloom.site.element.ShapeRule}.
 */
package yardloom.site.element;
