package stillturning.story.device;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EventWordsTest {

    @ParameterizedTest
    @CsvSource({
        "-1e-9,0.0 V",
        "-0.0,0.0 V",
        "-0.049,0.0 V",
        "-0.06,-0.1 V",
        "0.06,0.1 V",
        "-12.34,-12.3 V"
    })
    void nothingHasNoSign(double volts, String words) {
        assertEquals(words, EventWords.volts(volts));
    }
}
