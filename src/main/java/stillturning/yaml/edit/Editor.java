package stillturning.yaml.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Splice;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** Makes edits on one document, and makes sure that nothing else happened. */
final class Editor {

    /** An edit worked out: what is spliced, and which node thereby becomes which value. */
    private record Plan(Splice splice, Tree at, YamlValue becomes) {}

    private final YamlDocument document;
    private final DocumentPlaces places;
    private final Splicing splicing;

    Editor(YamlDocument document) {
        this.document = document;
        this.places = document.places();
        this.splicing = new Splicing(places);
    }

    Edited make(YamlEdit edit) throws EditRefused {
        Plan plan = plan(edit);
        YamlDocument after = document.with(plan.splice);
        Tree before =
                document.root().orElseThrow(() -> refused(edit, "the document cannot be read"));
        YamlValue expected = replaced(before, plan.at, plan.becomes);
        Optional<YamlValue> found = after.root().map(Tree::value);
        if (!found.equals(Optional.of(expected))
                || after.problems().size() > document.problems().size()) {
            throw refused(
                    edit, "the text around it is written in a way that the change would damage");
        }
        return new Edited(after, plan.splice);
    }

    private Plan plan(YamlEdit edit) throws EditRefused {
        if (edit instanceof YamlEdit.Set set) {
            return set(set.path(), set.value(), edit);
        }
        if (edit instanceof YamlEdit.AddField add) {
            return addField(add);
        }
        if (edit instanceof YamlEdit.AddItem add) {
            return addItem(add);
        }
        if (edit instanceof YamlEdit.Remove remove) {
            return remove(remove);
        }
        return rename((YamlEdit.Rename) edit);
    }

    private Plan set(String path, YamlValue value, YamlEdit edit) throws EditRefused {
        Tree target = target(path, edit);
        return new Plan(splicing.replace(path, target, value), target, value);
    }

    private Plan addField(YamlEdit.AddField add) throws EditRefused {
        YamlValue.Field field = new YamlValue.Field(add.key(), add.value());
        Tree target = target(add.mapping(), add);
        if (isEmpty(target)) {
            return set(add.mapping(), YamlValue.fields(field), add);
        }
        if (!(target instanceof Tree.Fields fields)) {
            throw refused(add, "no mapping stands there");
        }
        if (fields.find(add.key()).isPresent()) {
            throw refused(add, "the key is there already");
        }
        List<YamlValue.Field> more = new ArrayList<>(((YamlValue.Fields) fields.value()).fields());
        more.add(field);
        return new Plan(splicing.append(fields, field), fields, new YamlValue.Fields(more));
    }

    private Plan addItem(YamlEdit.AddItem add) throws EditRefused {
        Tree target = target(add.list(), add);
        if (isEmpty(target)) {
            return set(add.list(), new YamlValue.Items(List.of(add.value())), add);
        }
        if (!(target instanceof Tree.Items list)) {
            throw refused(add, "no list stands there");
        }
        List<YamlValue> more = new ArrayList<>(((YamlValue.Items) list.value()).items());
        more.add(add.value());
        return new Plan(splicing.append(list, add.value()), list, new YamlValue.Items(more));
    }

    private Plan remove(YamlEdit.Remove remove) throws EditRefused {
        target(remove.path(), remove);
        Tree parent =
                places.parent(remove.path())
                        .orElseThrow(
                                () -> refused(remove, "the whole document cannot be taken out"));
        int position = places.position(remove.path());
        YamlValue rest =
                parent instanceof Tree.Fields fields
                        ? new YamlValue.Fields(
                                without(((YamlValue.Fields) fields.value()).fields(), position))
                        : new YamlValue.Items(
                                without(((YamlValue.Items) parent.value()).items(), position));
        String parentPath = places.pathOf(parent);
        Splice splice =
                Rendering.isBlock(rest)
                        ? splicing.remove(parent, position)
                        : splicing.replace(parentPath, parent, rest);
        return new Plan(splice, parent, rest);
    }

    private Plan rename(YamlEdit.Rename rename) throws EditRefused {
        target(rename.path(), rename);
        Tree.Leaf key =
                places.keyLeaf(rename.path())
                        .orElseThrow(() -> refused(rename, "no key stands there"));
        Tree.Fields parent = (Tree.Fields) places.parent(rename.path()).orElseThrow();
        if (!rename.name().equals(key.text()) && parent.find(rename.name()).isPresent()) {
            throw refused(rename, "the name is taken");
        }
        int position = places.position(rename.path());
        List<YamlValue.Field> fields =
                new ArrayList<>(((YamlValue.Fields) parent.value()).fields());
        fields.set(position, new YamlValue.Field(rename.name(), fields.get(position).value()));
        return new Plan(splicing.rename(key, rename.name()), parent, new YamlValue.Fields(fields));
    }

    private Tree target(String path, YamlEdit edit) throws EditRefused {
        return places.tree(path).orElseThrow(() -> refused(edit, "there is no such place"));
    }

    private static boolean isEmpty(Tree tree) {
        return (tree instanceof Tree.Leaf leaf && leaf.isNull())
                || (!(tree instanceof Tree.Leaf) && Splicing.children(tree).isEmpty());
    }

    private static <T> List<T> without(List<T> all, int position) {
        return IntStream.range(0, all.size())
                .filter(i -> i != position)
                .mapToObj(all::get)
                .toList();
    }

    private EditRefused refused(YamlEdit edit, String because) {
        return new EditRefused(document.file().getFileName() + ": " + edit, because);
    }

    /** The value of a tree in which one node has another value. */
    private static YamlValue replaced(Tree tree, Tree at, YamlValue becomes) {
        if (isSame(tree, at)) {
            return becomes;
        }
        if (tree instanceof Tree.Items list) {
            return new YamlValue.Items(
                    list.items().stream().map(i -> replaced(i, at, becomes)).toList());
        }
        if (tree instanceof Tree.Fields fields) {
            return new YamlValue.Fields(
                    fields.entries().stream()
                            .map(
                                    e ->
                                            new YamlValue.Field(
                                                    e.key().text(),
                                                    replaced(e.value(), at, becomes)))
                            .toList());
        }
        return tree.value();
    }

    @SuppressWarnings("ReferenceEquality") // equal nodes may stand in several places
    private static boolean isSame(@Nullable Tree a, Tree b) {
        return a == b;
    }
}
