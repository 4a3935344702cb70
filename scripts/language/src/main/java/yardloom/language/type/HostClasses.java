package yardloom.language.type;

/**
 * The classes of the host that a checked script calls instead of Groovy's own: given by the caller,
 * so that this package knows nothing of how scripts run.
 *
 * @param operators what signs such as {@code +} do with numbers, texts and lists
 * @param values methods of lists, maps, texts and numbers; the first parameter is the receiver
 * @param units one getter for each unit word on a number
 * @param guard places, steps and blocks
 * @param builtins {@code param}, {@code include} and {@code fileText}
 * @param program the superclass of every compiled script
 */
public record HostClasses(
    Class<?> operators,
    Class<?> values,
    Class<?> units,
    Class<?> guard,
    Class<?> builtins,
    Class<?> program) {}
