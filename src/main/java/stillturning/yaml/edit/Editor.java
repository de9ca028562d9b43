package stillturning.yaml.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Splice;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;

/** Makes edits on one document, and makes sure that nothing else happened. */
final class Editor implements YamlEdit.Visitor<Editor.Plan> {

    /** An edit worked out: what is spliced, and which node by it becomes which value. */
    record Plan(Splice splice, Tree at, YamlValue becomes) {}

    private final YamlDocument document;
    private final DocumentPlaces places;
    private final Splicing splicing;

    Editor(YamlDocument document) {
        this.document = document;
        this.places = document.places();
        this.splicing = new Splicing(places);
    }

    Edited make(YamlEdit edit) throws EditRefused {
        Plan plan = edit.accept(this);
        YamlDocument after = document.with(plan.splice);
        Tree before =
                document.root().orElseThrow(() -> refused(edit, "the document cannot be read"));
        YamlValue expected = before.valueWith(plan.at, plan.becomes);
        Optional<YamlValue> found = after.root().map(Tree::value);
        if (!found.equals(Optional.of(expected))
                || after.problems().size() > document.problems().size()) {
            throw refused(
                    edit, "the text around it is written in a way that the change would damage");
        }
        return new Edited(after, plan.splice);
    }

    @Override
    public Plan visit(YamlEdit.Set set) throws EditRefused {
        return set(set.path(), set.value(), set);
    }

    private Plan set(String path, YamlValue value, YamlEdit edit) throws EditRefused {
        Tree target = target(path, edit);
        return new Plan(splicing.replace(path, target, value), target, value);
    }

    @Override
    public Plan visit(YamlEdit.AddField add) throws EditRefused {
        YamlValue.Field field = new YamlValue.Field(add.key(), add.value());
        Tree target = target(add.mapping(), add);
        if (target.isEmpty()) {
            return set(add.mapping(), YamlValue.fields(field), add);
        }
        if (!(target instanceof Tree.MappingNode fields)) {
            throw refused(add, "no mapping stands there");
        }
        if (fields.find(add.key()).isPresent()) {
            throw refused(add, "the key is there already");
        }
        List<YamlValue.Field> more = new ArrayList<>(fields.value().fields());
        more.add(field);
        return new Plan(splicing.append(fields, field), fields, new YamlValue.Fields(more));
    }

    @Override
    public Plan visit(YamlEdit.AddItem add) throws EditRefused {
        Tree target = target(add.list(), add);
        if (target.isEmpty()) {
            return set(add.list(), new YamlValue.Items(List.of(add.value())), add);
        }
        if (!(target instanceof Tree.ListNode list)) {
            throw refused(add, "no list stands there");
        }
        List<YamlValue> more = new ArrayList<>(list.value().items());
        more.add(add.value());
        return new Plan(splicing.append(list, add.value()), list, new YamlValue.Items(more));
    }

    @Override
    public Plan visit(YamlEdit.Remove remove) throws EditRefused {
        target(remove.path(), remove);
        Tree.BranchNode parent =
                places.parent(remove.path())
                        .orElseThrow(
                                () -> refused(remove, "the whole document cannot be taken out"));
        int position = places.position(remove.path());
        YamlValue rest = parent.without(position);
        String parentPath = places.pathOf(parent);
        Splice splice =
                Rendering.isBlock(rest)
                        ? splicing.remove(parent, position)
                        : splicing.replace(parentPath, parent, rest);
        return new Plan(splice, parent, rest);
    }

    @Override
    public Plan visit(YamlEdit.Rename rename) throws EditRefused {
        target(rename.path(), rename);
        Tree.LeafNode key =
                places.keyLeaf(rename.path())
                        .orElseThrow(() -> refused(rename, "no key stands there"));
        Tree.MappingNode parent = (Tree.MappingNode) places.parent(rename.path()).orElseThrow();
        if (!rename.name().equals(key.text()) && parent.find(rename.name()).isPresent()) {
            throw refused(rename, "the name is taken");
        }
        int position = places.position(rename.path());
        List<YamlValue.Field> fields = new ArrayList<>(parent.value().fields());
        fields.set(position, new YamlValue.Field(rename.name(), fields.get(position).value()));
        return new Plan(splicing.rename(key, rename.name()), parent, new YamlValue.Fields(fields));
    }

    private Tree target(String path, YamlEdit edit) throws EditRefused {
        return places.tree(path).orElseThrow(() -> refused(edit, "there is no such place"));
    }

    private EditRefused refused(YamlEdit edit, String because) {
        return new EditRefused(document.file().getFileName() + ": " + edit, because);
    }
}
