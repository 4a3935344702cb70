/**
 * The JSON form of a plan: the tree of its word calls, read from text with a place for every value
 * and written back. Start at {@link yardloom.language.form.FormReader}.
 */
package yardloom.language.form;
