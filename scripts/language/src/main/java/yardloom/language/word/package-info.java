/**
 * Words by lexical scope: the raw tree is translated into a fresh one in which every call is
 * spelled out. Start with {@link yardloom.language.word.Rewriter} (statements) and {@code
 * Expressions}; {@code WordCalls} finds what a call means. Kinds of node that are not named here
 * are refused, so nothing of the raw tree reaches the compiler.
 */
package yardloom.language.word;
