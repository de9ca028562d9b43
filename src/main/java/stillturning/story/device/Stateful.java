package stillturning.story.device;

/** A quantity that grows or shrinks between events: a charge, a heat. */
public interface Stateful {

    /** Present value. */
    double value();

    /** Sets the value for a trial. */
    void value(double value);

    /** Change a second at the present operating point; 0 while nothing moves it. */
    double perSecond();

    /** How far it may still go the way it moves before something becomes of it; above 0. */
    double way();

    /** An instant at which something happened is over; the network is solved as it goes on. */
    default void settled() {}

    /** A step is taken; the network is solved at its end. */
    default void stepped() {}

    /** Whether its coming to an end is a matter of moments (heat) or of minutes (charge). */
    boolean quick();
}
