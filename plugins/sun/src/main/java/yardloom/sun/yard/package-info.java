/**
 * What does the plan ask about sun, and what scene does it make? Start with {@link
 * yardloom.sun.yard.YardSun}.
 */
package yardloom.sun.yard;
