package stillturning.cli.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.front.TrialResult;
import stillturning.cli.explore.KeptTrials.TrialsFile;
import stillturning.cli.terminal.ResumeFile;

class KeptTrialsTest {

    private static Optional<Map<String, TrialResult>> read(String looked) {
        String text = "{\"kind\":\"k\",\"fingerprint\":\"f\",\"looked\":[" + looked + "]}";
        return ResumeFile.in(text, TrialsFile.class).flatMap(file -> file.trials(2));
    }

    private static String met(String values, String evidence) {
        return "{\"way\":\"0\",\"missed\":\"\",\"tried\":true,\"shortfall\":0,\"values\":"
                + values
                + ",\"evidence\":"
                + evidence
                + "}";
    }

    @Test
    void whatWasFoundIsReadBackAnEndlessEnduranceToo() {
        assertEquals(
                Optional.of(
                        Map.of(
                                "0",
                                new TrialResult.Met(
                                        List.of(3.0, Double.NEGATIVE_INFINITY), List.of("x")))),
                read(met("[3,\"-Infinity\"]", "[\"x\"]")));
    }

    /** Else a layout would be compared by what nobody found out. */
    @ParameterizedTest
    @ValueSource(strings = {"[3]", "[3,4,5]", "[3,\"NaN\"]", "[3,null]", "[]"})
    void valuesThatNoSearchFindsAreRefused(String values) {
        assertEquals(Optional.empty(), read(met(values, "[]")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "{}",
                "{\"way\":\"0\",\"missed\":\"x\",\"tried\":true,\"shortfall\":\"NaN\","
                        + "\"values\":[],\"evidence\":[]}",
                "{\"way\":\"0\",\"missed\":\"x\",\"tried\":true,\"shortfall\":-1,"
                        + "\"values\":[],\"evidence\":[]}"
            })
    void trialsThatAreNoneAreRefused(String trial) {
        assertEquals(Optional.empty(), read(trial));
        assertEquals(Optional.empty(), read(met("[3,4]", "[null]")));
        assertEquals(Optional.empty(), ResumeFile.in("null", TrialsFile.class));
    }
}
