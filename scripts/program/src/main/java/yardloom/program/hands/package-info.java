/** The threads of one command. Start with {@link yardloom.program.hands.ManyHands}. */
package yardloom.program.hands;
