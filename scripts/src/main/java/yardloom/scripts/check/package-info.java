/**
 * Checks and compiles plan scripts before anything of them runs. Start with {@link
 * yardloom.scripts.check.ScriptCompiler}; what scripts may touch is listed in {@link
 * yardloom.scripts.check.ScriptTypes}.
 *
 * <p>The gates, outermost first: {@code TextGate} (raw text), {@code Rewriter} and {@code
 * Expressions} (raw tree; only what they know is translated, into a fresh tree), {@code WordCalls}
 * (words by lexical scope), {@code TypedPass} and {@code LateCalls} (static compilation; every
 * target on the list), {@code ClassGate} (finished bytes), {@code ListedLoader} (only listed
 * classes exist). Each refuses what it does not know.
 */
package yardloom.scripts.check;
