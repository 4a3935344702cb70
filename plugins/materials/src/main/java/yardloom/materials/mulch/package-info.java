/**
 * What a plan says of sheet mulch, what is wrong with it, and what to add in later years. Start
 * with {@link yardloom.materials.mulch.MulchWords}.
 */
package yardloom.materials.mulch;
