package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;

/**
 * A metal bar: feeds arrive at studs of their own, everything else leaves from {@code bar}.
 *
 * @param studs names of the feed studs
 * @param studOhms resistance of a stud's joint (ohm)
 */
public record Bus(Tag tag, List<String> studs, double studOhms) implements Part {

    public Bus {
        studs = List.copyOf(studs);
    }

    @Override
    public List<String> terminals() {
        List<String> all = new ArrayList<>(studs);
        all.add("bar");
        return List.copyOf(all);
    }

    @Override
    public List<Element> elements() {
        return studs.stream()
                .<Element>map(stud -> new Conductor(stud, stud, "bar", studOhms))
                .toList();
    }

    @Override
    public List<FailureMode> failureModes() {
        List<FailureMode> modes = new ArrayList<>();
        modes.add(FailureMode.of("short to ground", Faults.shortToStructure("bar")));
        for (String stud : studs) {
            modes.add(FailureMode.of(stud + " open", Faults.open(stud)));
        }
        return List.copyOf(modes);
    }

    @Override
    public String entry() {
        return studs.isEmpty() ? "bar" : studs.get(0);
    }

    @Override
    public String exit() {
        return "bar";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    @Override
    public boolean mayDangle(String terminal) {
        return true;
    }
}
