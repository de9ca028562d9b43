package stillturning.desktop.viewmodel.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.desktop.viewmodel.Desk;
import stillturning.files.finding.PartPlace;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.shape.FormField;

/** Where in the files what a person sees on the paper is written. */
record WrittenPlaces(Desk desk) {

    /** Where what is known of a part stands: its own entry, the run that makes it, its load. */
    List<FormPlace> of(String part, Map<String, PartPlace> made) {
        Optional<YamlDocument> candidate = document(Desk.file(desk.candidate().get()));
        List<FormPlace> places = new ArrayList<>();
        if (candidate.filter(c -> has(c, DocumentPlaces.under("parts", part))).isPresent()) {
            places.add(FormPlace.candidate("parts", part));
        } else if (isLoad(part)) {
            candidate.flatMap(c -> FormPlace.feeds(c, part)).ifPresent(places::add);
            places.add(FormPlace.study("loads", part));
        } else {
            Optional.ofNullable(made.get(part))
                    .map(place -> DocumentPlaces.keys(place.path()))
                    .filter(keys -> keys.size() == 2)
                    .map(keys -> FormPlace.candidate(keys.get(0)).only(keys.subList(1, 2)))
                    .ifPresent(places::add);
        }
        String flight = DocumentPlaces.under("positions.flight", part);
        if (candidate.filter(c -> has(c, flight)).isPresent()) {
            places.add(FormPlace.candidate("positions", "flight").only(List.of(part)));
        }
        return places;
    }

    /** Whether it is a load of the study. */
    boolean isLoad(String part) {
        String path = DocumentPlaces.under("loads", part);
        return document(Desk.STUDY_FILE).filter(s -> has(s, path)).isPresent();
    }

    private static boolean has(YamlDocument document, String path) {
        return document.places().value(path).isPresent();
    }

    private Optional<YamlDocument> document(String file) {
        return desk.draft().document(file);
    }

    /** The study's zones, in its order. */
    Stream<String> zones() {
        return document(Desk.STUDY_FILE).flatMap(s -> FormPlace.study("zones").form(s, s)).stream()
                .flatMap(form -> form.fields().stream())
                .map(FormField::key);
    }
}
