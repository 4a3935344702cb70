/**
 * Work that is done by several at once where the program has them. Start with {@link
 * yardloom.kernel.hands.Hands}; what is worked out is the same with any number of them.
 */
package yardloom.kernel.hands;
