/** Where a number or a rule comes from. Start with {@link yardloom.kernel.source.Source}. */
package yardloom.kernel.source;
