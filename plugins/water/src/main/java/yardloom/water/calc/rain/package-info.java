/**
 * Rain: what runs off a roof or a lawn, what a tank makes of it, what reaches roots. Unit types at
 * the boundary. Start with {@link yardloom.water.calc.rain.RainYield} and {@link
 * yardloom.water.calc.rain.TankBehaviour}.
 */
package yardloom.water.calc.rain;
