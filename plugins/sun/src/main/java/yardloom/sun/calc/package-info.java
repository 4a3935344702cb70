/**
 * Pure geometry and astronomy of sun and shade: metres, radians and hours as plain numbers whose
 * names carry the unit. Start with {@link yardloom.sun.calc.SunEngine}.
 */
package yardloom.sun.calc;
