package stillturning;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * How long the signatures of some sources are, and which names two types share. A record's
 * constructors give its components, so they may be as long as a record.
 */
final class Signatures {

    /** More parameters than this are hard to tell apart where they are given. */
    static final int MOST_PARAMETERS = 5;

    /** More components than this are seldom one thing. */
    static final int MOST_COMPONENTS = 8;

    private final Map<String, Integer> parameters = new TreeMap<>();
    private final Map<String, Integer> components = new TreeMap<>();
    private final Map<String, TreeSet<String>> packages = new TreeMap<>();
    private int methods;

    Signatures(List<JavaFileObject> sources) throws IOException {
        JavacTask parser =
                (JavacTask)
                        ToolProvider.getSystemJavaCompiler()
                                .getTask(null, null, null, List.of("-proc:none"), null, sources);
        for (CompilationUnitTree unit : parser.parse()) {
            String room = String.valueOf(unit.getPackageName());
            for (Tree type : unit.getTypeDecls()) {
                if (type instanceof ClassTree named) {
                    packages.computeIfAbsent(
                                    named.getSimpleName().toString(), name -> new TreeSet<>())
                            .add(room);
                }
            }
            new Sizes().scan(unit, "");
        }
    }

    /** Methods and constructors with too many parameters, with how many they have. */
    Map<String, Integer> longParameterLists() {
        return parameters;
    }

    /** Records with too many components, with how many they have. */
    Map<String, Integer> longRecords() {
        return components;
    }

    /** Packages by simple name, of names that top-level types of several packages have. */
    Map<String, Set<String>> sharedNames() {
        Map<String, Set<String>> shared = new TreeMap<>(packages);
        shared.values().removeIf(rooms -> rooms.size() == 1);
        return shared;
    }

    int methods() {
        return methods;
    }

    private final class Sizes extends TreeScanner<Void, String> {

        private int ownComponents = -1;

        @Override
        public Void visitClass(ClassTree type, String outer) {
            String name = (outer.isEmpty() ? "" : outer + ".") + type.getSimpleName();
            int outerComponents = ownComponents;
            ownComponents = type.getKind() == Tree.Kind.RECORD ? componentsOf(type) : -1;
            if (ownComponents > MOST_COMPONENTS) {
                components.put(name, ownComponents);
            }
            super.visitClass(type, name);
            ownComponents = outerComponents;
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, String type) {
            methods++;
            int count = method.getParameters().size();
            boolean makes = method.getName().contentEquals("<init>");
            boolean record = makes && ownComponents >= 0;
            if (count > (record ? Math.max(MOST_COMPONENTS, ownComponents) : MOST_PARAMETERS)) {
                String what = makes ? "new" : method.getName().toString();
                parameters.merge(type + " " + what, count, Math::max);
            }
            return super.visitMethod(method, type);
        }

        /** A record's own fields are its components: it can have no others but static ones. */
        private static int componentsOf(ClassTree type) {
            return (int)
                    type.getMembers().stream()
                            .filter(VariableTree.class::isInstance)
                            .map(VariableTree.class::cast)
                            .filter(v -> !v.getModifiers().getFlags().contains(Modifier.STATIC))
                            .count();
        }
    }
}
