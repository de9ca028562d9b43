package stillturning.files.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.Thorough;
import stillturning.files.record.LogFile.LogLine;

/** Logs of discharge tests as instruments write them. */
class LogFileTest {

    private static final List<LogLine> TWO =
            List.of(new LogLine(0, 12.6, 5), new LogLine(30, 12.4, 5.5));

    @TempDir private Path here;

    private LogFile.ReadLog read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private LogFile.ReadLog read(byte[] bytes) throws IOException {
        Path file = here.resolve("log.csv");
        Files.write(file, bytes);
        return LogFile.read(file);
    }

    private List<String> faults(String text) throws IOException {
        return read(text).problems().stream().map(String::valueOf).toList();
    }

    @Test
    void oneLogReadsTheSameInEveryHand() throws IOException {
        for (String text :
                List.of(
                        "time (s),voltage (V),current (A)\n0,12.6,5\n30,12.4,5.5\n",
                        "\ufeffTime [min];Volts;I (mA)\r\n0;12,6;5000\r\n0,5;12,4;5500\r\n",
                        "# bench\n\nno.\tt (h)\tU (mV)\tamps\n1\t0\t12600\t5\n2\t"
                                + (30 / 3600.0)
                                + "\t12400\t5.5",
                        "\"time\",\"V (V)\",\"amps\"\n0:00:00,\"12.6\",5\n0:00:30,12.4,5.5\n")) {
            LogFile.ReadLog read = read(text);
            assertEquals(List.of(), read.problems(), text);
            for (int i = 0; i < 2; i++) {
                assertEquals(TWO.get(i).seconds(), read.lines().get(i).seconds(), 1e-9, text);
                assertEquals(TWO.get(i).volts(), read.lines().get(i).volts(), 1e-9, text);
                assertEquals(TWO.get(i).amps(), read.lines().get(i).amps(), 1e-9, text);
            }
        }
    }

    @Test
    void everyBadLineIsToldWithItsPlace() throws IOException {
        assertEquals(
                List.of(
                        "log.csv:3:4: \"NaN\" is no number for its volts; write a number such as"
                                + " 12.4",
                        "log.csv:4:9: \"1e999\" is beyond any amps; write between -100000 and"
                                + " 100000",
                        "log.csv:5:1: \"-5\" is beyond any time; write between 0 and 8640000",
                        "log.csv:6:6: the line ends before its amps; complete it",
                        "log.csv:8:1: this is not later than the reading before it; put the"
                                + " readings in the order of time, one an instant"),
                faults(
                        """
                        time (s),volts,amps
                        10,12.6,5
                        20,NaN,5
                        25,12.5,1e999
                        -5,12.6,5
                        30,12
                        40,12.5,5
                        40,12.5,5
                        """));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|1:1: the log is empty",
                "time (s),volts|1:1: no column is headed as current (A)",
                "time (s),volts,amps|1:1: no reading follows the heads",
                "time (s),voltage,amps|1:10: the head does not say its unit",
                "time (s),voltage (kN),amps|1:10: \"kn\" is no unit of it",
                "time (s),volts,V (V),amps|1:16: a second column is headed as voltage (V)"
            })
    void aHeadThatDoesNotSayEnoughIsRefused(String text, String told) throws IOException {
        assertTrue(faults(text).get(0).contains(told), () -> text + ": " + told);
    }

    @Test
    void whatIsNoTextIsRefusedWithItsPlace() throws IOException {
        byte[] bytes = "time (s),volts,amps\n1,12,\0".getBytes(StandardCharsets.UTF_8);
        assertEquals("log.csv:2:6", place(read(bytes)));
        bytes[20] = (byte) 0xff;
        assertEquals("log.csv:2:1", place(read(bytes)));
    }

    private static String place(LogFile.ReadLog read) {
        return String.valueOf(read.problems().get(0)).split(": ", 2)[0];
    }

    @Thorough
    @Test
    void aMillionReadingsAreReadInSeconds() throws IOException {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        StringBuilder text = new StringBuilder("time (s),volts,amps\n");
        for (int i = 0; i < 1_000_000; i++) {
            text.append(i).append(",12.5,5\n");
        }
        String whole = text.toString();
        assertEquals(1_000_000, read(whole).lines().size());
        String bad = whole.replace("12.5", "x");
        List<String> told = faults(bad);
        assertEquals(51, told.size());
        assertTrue(told.get(50).contains("999950 more lines are wrong"), told.get(50));
        // processor time, since others may be at work on the machine
        long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
        assertTrue(took < 15e9, () -> took + " ns for twice a million");
    }
}
