/**
 * What the author says on the drawing and about its findings: notes, dimensions, hidden labels,
 * acceptances. Start with {@link yardloom.site.remark.RemarkWords}.
 */
package yardloom.site.remark;
