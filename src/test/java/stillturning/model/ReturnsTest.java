package stillturning.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.parts.element.Demand.DemandKind;

/** What voltages are told against, by what joins what. */
class ReturnsTest {

    /** A battery whose minus is joined to nothing but the return of its own load. */
    private static Bench radioAlone() {
        return new Bench()
                .part(Shelf.lead("radio-battery", 5, 0.02, 1))
                .bus("radio-bus")
                .join("radio-battery", "plus", "radio-bus", "bar")
                .loadWithoutReturn(Shelf.twoInputs("radio", DemandKind.CONSTANT_CURRENT, 1))
                .join("radio-bus", "bar", "radio", "a")
                .join("radio", "minus", "radio-battery", "minus");
    }

    @Test
    void theFirstBatterysSystemComesFirstAndTheOthersKeepTheirOwn() {
        Circuit circuit =
                radioAlone()
                        .part(Shelf.lead("main-battery", 20, 0.01, 1))
                        .join("main-battery", "minus", "ground", "stud")
                        .bus("main-bus")
                        .join("main-battery", "plus", "main-bus", "bar")
                        .candidate()
                        .circuit();
        Returns returns = circuit.returns();
        System.out.println(returns + " " + circuit.netOf());
        int own = circuit.net("radio-battery", "minus");
        assertEquals(List.of(own, 0), returns.all());
        assertEquals(own, returns.of(circuit.net("radio-bus", "bar")));
        assertEquals(0, returns.of(circuit.net("main-bus", "bar")));
        assertEquals(own, returns.of(circuit.nets() + 5), "a net that only a fault has");
    }

    @Test
    void onceALeadJoinsThemAllIsToldAgainstTheStructure() {
        Circuit circuit =
                radioAlone().join("radio-battery", "minus", "ground", "stud").candidate().circuit();
        assertEquals(Returns.ON_STRUCTURE, circuit.returns());
    }

    @Test
    void withoutAnySourceItIsTheStructure() {
        Circuit circuit = new Bench().bus("bus").candidate().circuit();
        assertEquals(Returns.ON_STRUCTURE, circuit.returns());
    }
}
