package stillturning.quantity.field;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A quantity that is another one in an aircraft of another nominal voltage: with its power, so 1
 * for a voltage and 2 for the resistance of a winding of the same power.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT})
public @interface GrowsWithVolts {
    /** The power of the voltage. */
    int power() default 1;
}
