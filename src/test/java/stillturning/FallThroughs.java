package stillturning;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.SwitchTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * Finds the branches into which a new member of a closed family (a sealed interface, an enum) would
 * fall without anybody being told.
 *
 * <ol>
 *   <li>A {@code switch} over an enum has no default branch: without one the compiler names what is
 *       forgotten.
 *   <li>Where one method asks one expression by {@code instanceof} for two or more members of a
 *       family, it asks for every member.
 *   <li>A single test asks "is it this one?". A new member is not, so "no" is right, as long as
 *       "no" leads to nothing: to no branch, an empty answer, or an exception. A branch that does
 *       something for "all the others" answers for members that nobody thought of.
 * </ol>
 *
 * <p>A default method of the family itself is no such branch: who adds a member reads it on the
 * way. Nor is a filter by class literal, which asks for one member only.
 *
 * <p>Sources are parsed, not attributed, which would take three times as long: a name stands for
 * what the imports, the package, or the file's own classes say.
 */
final class FallThroughs {

    /**
     * A branch for everything that is not named.
     *
     * @param where file and method
     * @param family full name of the family
     */
    record Found(String file, String where, String family, String why) {
        @Override
        public String toString() {
            return file + ", " + where + " (" + family + "): " + why;
        }
    }

    /** An expression that is asked for its kind, inside one method or field. */
    private record Question(String file, Tree member, String asked, String family) {}

    /** Says "nothing". */
    private static final Pattern NOTHING =
            Pattern.compile(
                    "false|null|\"\"|[01](\\.0)?|(List|Set|Map)\\.of\\(\\)"
                            + "|(Optional|OptionalDouble|OptionalInt|Stream)\\.empty\\(\\)");

    private final List<CompilationUnitTree> units = new ArrayList<>();
    private final Map<String, Set<String>> families = new HashMap<>();
    private final Map<String, String> familyOf = new HashMap<>();
    private final Map<String, Set<String>> enums = new HashMap<>();
    private final Map<Question, Set<String>> asked = new LinkedHashMap<>();
    private final List<Found> found = new ArrayList<>();
    private int switches;

    FallThroughs(List<? extends JavaFileObject> sources) {
        JavacTask task =
                (JavacTask)
                        ToolProvider.getSystemJavaCompiler()
                                .getTask(null, null, null, List.of("-proc:none"), null, sources);
        try {
            task.parse().forEach(units::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        units.forEach(unit -> new Declarations().scan(unit, null));
        units.forEach(unit -> new Members(unit).scan(unit, null));
        units.forEach(unit -> new Branches(unit).scan(unit, null));
        asked.forEach(this::judge);
    }

    List<Found> found() {
        return found;
    }

    /** Expressions that are asked for a member of a sealed family. */
    int questions() {
        return asked.size();
    }

    /** Switches over an enum of these sources. */
    int switches() {
        return switches;
    }

    private void judge(Question question, Set<String> named) {
        Set<String> missing = new TreeSet<>(families.getOrDefault(question.family, Set.of()));
        missing.removeAll(named);
        if (named.size() > 1 && !missing.isEmpty()) {
            tell(question, "asks for " + named + " and forgets " + missing);
        }
    }

    private void tell(Question question, String why) {
        String where = nameOf(question.member) + " asks " + question.asked;
        found.add(new Found(question.file, where, question.family, why));
    }

    private static String nameOf(Tree member) {
        if (member instanceof MethodTree method) {
            return method.getName().toString();
        }
        return member instanceof VariableTree field ? field.getName().toString() : "initialiser";
    }

    private static String packageOf(CompilationUnitTree unit) {
        return unit.getPackageName() == null ? "" : unit.getPackageName().toString();
    }

    private static String fileOf(CompilationUnitTree unit) {
        return unit.getSourceFile().getName().replaceAll("^.*/", "");
    }

    private static String fullName(TreePath path) {
        StringBuilder name = new StringBuilder();
        for (Tree at : path) {
            if (at instanceof ClassTree type) {
                name.insert(0, "." + type.getSimpleName());
            }
        }
        return packageOf(path.getCompilationUnit()) + name;
    }

    /** What a type in a source is called in full, if it is one of those that are known. */
    private static Optional<String> resolved(
            CompilationUnitTree unit, Tree type, Set<String> known) {
        String name = type.toString().replaceAll("<.*|@\\w+ ", "");
        String head = name.replaceAll("\\..*", "");
        for (ImportTree used : unit.getImports()) {
            String full = used.getQualifiedIdentifier().toString();
            if (full.endsWith("." + head)) {
                return Optional.of(full + name.substring(head.length())).filter(known::contains);
            }
        }
        String here = packageOf(unit) + ".";
        if (known.contains(here + name)) {
            return Optional.of(here + name);
        }
        String inFile = here + fileOf(unit).replace(".java", "") + ".";
        return known.stream()
                .filter(k -> k.equals(name) || (k.startsWith(inFile) && k.endsWith("." + name)))
                .findFirst();
    }

    /** First pass: the families. */
    private final class Declarations extends TreePathScanner<Void, Void> {
        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            String name = fullName(getCurrentPath());
            if (type.getModifiers().getFlags().contains(Modifier.SEALED)) {
                families.put(name, new TreeSet<>());
            }
            if (type.getKind() == Tree.Kind.ENUM) {
                Set<String> constants = new TreeSet<>();
                for (Tree member : type.getMembers()) {
                    if (member instanceof VariableTree constant) {
                        constants.add(constant.getName().toString());
                    }
                }
                enums.put(name, constants);
            }
            return super.visitClass(type, null);
        }
    }

    /** Second pass: who belongs to a family. */
    private final class Members extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;

        Members(CompilationUnitTree unit) {
            this.unit = unit;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            String name = fullName(getCurrentPath());
            List<Tree> above = new ArrayList<>(type.getImplementsClause());
            Optional.ofNullable(type.getExtendsClause()).ifPresent(above::add);
            for (Tree one : above) {
                resolved(unit, one, families.keySet())
                        .ifPresent(
                                family -> {
                                    families.get(family).add(name);
                                    familyOf.put(name, family);
                                });
            }
            return super.visitClass(type, null);
        }
    }

    /** Third pass: what hangs on a member. */
    private final class Branches extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;

        Branches(CompilationUnitTree unit) {
            this.unit = unit;
        }

        @Override
        public Void visitSwitch(SwitchTree tree, Void nothing) {
            look(tree.getExpression(), tree.getCases());
            return super.visitSwitch(tree, null);
        }

        @Override
        public Void visitSwitchExpression(SwitchExpressionTree tree, Void nothing) {
            look(tree.getExpression(), tree.getCases());
            return super.visitSwitchExpression(tree, null);
        }

        private void look(ExpressionTree selector, List<? extends CaseTree> cases) {
            Set<String> labels = new TreeSet<>();
            cases.forEach(c -> c.getExpressions().forEach(e -> labels.add(e.toString())));
            Optional<String> ours =
                    enums.entrySet().stream()
                            .filter(e -> e.getValue().containsAll(labels))
                            .map(Map.Entry::getKey)
                            .findFirst();
            if (labels.isEmpty() || ours.isEmpty()) {
                return;
            }
            switches++;
            if (cases.stream().anyMatch(c -> c.getExpressions().isEmpty())) {
                tell(question(selector, ours.get()), "has a default branch");
            }
        }

        @Override
        public Void visitInstanceOf(InstanceOfTree test, Void nothing) {
            resolved(unit, test.getType(), familyOf.keySet())
                    .ifPresent(member -> look(test.getExpression(), member));
            return super.visitInstanceOf(test, null);
        }

        private void look(ExpressionTree expression, String member) {
            Question question = question(expression, familyOf.getOrDefault(member, ""));
            asked.computeIfAbsent(question, q -> new TreeSet<>()).add(member);
            if (servesTheOthers()) {
                tell(question, "does something for all but " + member);
            }
        }

        private Question question(ExpressionTree expression, String family) {
            Tree member = unit;
            for (Tree at : getCurrentPath()) {
                if (at instanceof ClassTree) {
                    break;
                }
                member = at;
            }
            String bare = expression.toString().replaceAll("^\\((.*)\\)$", "$1");
            return new Question(fileOf(unit), member, bare, family);
        }

        /** Whether the test at the current path has a branch that does something for the others. */
        private boolean servesTheOthers() {
            TreePath at = getCurrentPath();
            boolean named = true;
            while (isPartOfCondition(at.getParentPath().getLeaf())) {
                at = at.getParentPath();
                named ^= at.getLeaf().getKind() == Tree.Kind.LOGICAL_COMPLEMENT;
            }
            TreePath above = at.getParentPath();
            if (above.getLeaf() instanceof ConditionalExpressionTree choice
                    && choice.getCondition() == at.getLeaf()) {
                return !isNothing(named ? choice.getFalseExpression() : choice.getTrueExpression());
            }
            if (above.getLeaf() instanceof IfTree fork) {
                return named ? hasOther(fork, above) : !leaves(fork.getThenStatement());
            }
            return !named;
        }

        private static boolean isPartOfCondition(Tree tree) {
            return Set.of(
                            Tree.Kind.PARENTHESIZED,
                            Tree.Kind.CONDITIONAL_AND,
                            Tree.Kind.CONDITIONAL_OR,
                            Tree.Kind.LOGICAL_COMPLEMENT)
                    .contains(tree.getKind());
        }

        private boolean hasOther(IfTree fork, TreePath path) {
            StatementTree other = fork.getElseStatement();
            if (other != null) {
                return !(other instanceof IfTree) && !saysNothing(other);
            }
            StatementTree then = last(fork.getThenStatement());
            if (then instanceof ThrowTree
                    || !leaves(then)
                    || !(path.getParentPath().getLeaf() instanceof BlockTree block)) {
                return false;
            }
            return last(block) != fork && !saysNothing(last(block));
        }

        private static StatementTree last(StatementTree statement) {
            return statement instanceof BlockTree block && !block.getStatements().isEmpty()
                    ? last(block.getStatements().get(block.getStatements().size() - 1))
                    : statement;
        }

        private boolean saysNothing(StatementTree statement) {
            StatementTree last = last(statement);
            return last instanceof ThrowTree
                    || (last instanceof ReturnTree back
                            && (back.getExpression() == null || isNothing(back.getExpression())));
        }

        private static boolean isNothing(ExpressionTree value) {
            if (value instanceof ConditionalExpressionTree choice) {
                return isNothing(choice.getFalseExpression());
            }
            return NOTHING.matcher(value.toString()).matches();
        }

        private static boolean leaves(StatementTree statement) {
            return Set.of(Tree.Kind.RETURN, Tree.Kind.THROW, Tree.Kind.CONTINUE, Tree.Kind.BREAK)
                    .contains(last(statement).getKind());
        }
    }
}
