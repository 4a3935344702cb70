/**
 * What the plan asks about sun and what is known about light. Hours are direct sun a day unless
 * said otherwise. Start with {@link yardloom.sun.model.SunSettings}.
 */
package yardloom.sun.model;
