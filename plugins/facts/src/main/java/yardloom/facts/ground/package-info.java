/**
 * What is on the ground before the work begins. Start with {@link
 * yardloom.facts.ground.OpenGround}.
 */
package yardloom.facts.ground;
