package stillturning.network;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ChargeOnly;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.GasPath;
import stillturning.network.law.LimitedConductor;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;
import stillturning.network.law.Storage;

/** A network of the reference file with the voltages that the simulator found. */
@SuppressWarnings("ArrayRecordComponent") // read-only fixture
record ReferenceNetwork(String name, Network network, List<String> nets, double[] volts) {

    static List<ReferenceNetwork> read(String resource) {
        List<ReferenceNetwork> all = new ArrayList<>();
        List<String> block = new ArrayList<>();
        for (String line : lines(resource)) {
            if (line.startsWith("network ") && !block.isEmpty()) {
                all.add(of(block));
                block.clear();
            }
            if (!line.isBlank() && !line.startsWith("#")) {
                block.add(line);
            }
        }
        all.add(of(block));
        return all;
    }

    private static List<String> lines(String resource) {
        try (InputStream in = ReferenceNetwork.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("missing " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReferenceNetwork of(List<String> block) {
        List<String> nets = new ArrayList<>(List.of("0"));
        List<Branch> branches = new ArrayList<>();
        double[] volts = new double[block.size() * 2];
        for (String line : block.subList(1, block.size())) {
            String[] words = line.split(" ", -1);
            if (words[0].equals("branch")) {
                BranchLaw law = law(words);
                branches.add(new Branch(index(nets, words[1]), index(nets, words[2]), law));
            } else {
                volts[index(nets, words[1])] = Double.parseDouble(words[2]);
            }
        }
        String name = block.get(0).substring("network ".length());
        return new ReferenceNetwork(name, new Network(nets.size(), branches), nets, volts);
    }

    private static int index(List<String> nets, String name) {
        if (!nets.contains(name)) {
            nets.add(name);
        }
        return nets.indexOf(name);
    }

    private static BranchLaw law(String[] words) {
        double[] x = new double[words.length];
        for (int i = 4; i < words.length; i++) {
            x[i] = Double.parseDouble(words[i]);
        }
        return switch (words[3]) {
            case "open" -> Open.CIRCUIT;
            case "resistive" -> new Resistive(x[4]);
            case "source" -> new SourceBehindOhms(x[4], x[5]);
            case "limited" -> new LimitedSource(x[4], x[5], x[6]);
            case "charge" -> new ChargeOnly(x[4], x[5]);
            case "power" -> new ConstantPower(x[4], x[5]);
            case "current" -> new ConstantCurrent(x[4], x[5]);
            case "diode" -> new DiodeDrop(x[4], x[5], x[6]);
            case "channel" -> new LimitedConductor(x[4], x[5]);
            case "storage" ->
                    new Storage(
                            x[4],
                            x[5],
                            new Storage.Intake(x[6], x[7], GasPath.straight(x[8], x[9])),
                            x[10]);
            case "converter" -> new ConverterInput((int) x[4], x[5], x[6], x[7]);
            default -> throw new IllegalArgumentException("law " + words[3]);
        };
    }

    @Override
    public String toString() {
        return name;
    }
}
