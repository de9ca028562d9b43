package stillturning.quantity.field;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import stillturning.quantity.Dimension;

/**
 * What a component measures that a file writes with a unit, and its limits, each written with a
 * unit; a plain number is its SI value.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface OfDimension {
    /** What it measures. */
    Dimension value();

    /** The value must be greater than this; no limit if empty. */
    String above() default "";

    /** The value must not be less than this; no limit if empty. */
    String least() default "";

    /** The value must not be greater than this; no limit if empty. */
    String most() default "";
}
