/**
 * Static compilation of the rewritten script. {@link yardloom.language.typed.TypedPass} is Groovy's
 * static compiler; {@code LateCalls} and {@code OperatorTypes} find the one listed method behind a
 * sign, a method name or a property once the types of the operands are known.
 */
package yardloom.language.typed;
