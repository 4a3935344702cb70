/**
 * What values scripts may hold and what they may ask of them. {@link
 * yardloom.language.type.ScriptTypes} is the list; the other classes say how types are called in
 * messages, what fits where, and which classes of the host serve lists, texts and numbers.
 */
package yardloom.language.type;
