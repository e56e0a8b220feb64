package org.borewright.architecture;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.Name;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * A source file as the compiler reads it.
 *
 * @param room the package it stands in
 * @param name of the file
 * @param lines of the file
 * @param methods that have a body, constructors among them
 * @param unexplained what is public and has no Javadoc: types and methods, but no overrides and no accessors of records
 */
record Source(String room, String name, long lines, List<Method> methods, List<String> unexplained) {

    /**
     * A method or constructor.
     *
     * @param name with its file and line
     * @param bodyLines from brace to brace
     * @param parameters how many it takes; none for the constructor of a record, whose components are its fields
     */
    record Method(String name, long bodyLines, int parameters) {}

    /** Every source below a folder, in order of their paths. */
    static List<Source> below(Path folder) throws IOException {
        try (StandardJavaFileManager files =
                        ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, null, null);
                Stream<Path> all = Files.walk(folder)) {
            List<Path> sources = all.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            return read(files.getJavaFileObjectsFromPaths(sources));
        }
    }

    /** Reads sources without compiling them. */
    static List<Source> read(Iterable<? extends JavaFileObject> files) throws IOException {
        JavacTask task = (JavacTask) ToolProvider.getSystemJavaCompiler().getTask(null, null, null, null, null, files);
        DocTrees trees = DocTrees.instance(task);
        List<Source> sources = new ArrayList<>();
        for (CompilationUnitTree unit : task.parse()) {
            Reading reading = new Reading(unit, trees);
            reading.scan(unit, null);
            sources.add(new Source(
                    unit.getPackageName().toString(),
                    reading.file,
                    unit.getSourceFile().getCharContent(true).toString().lines().count(),
                    List.copyOf(reading.methods),
                    List.copyOf(reading.unexplained)));
        }
        return List.copyOf(sources);
    }

    boolean isPackageInfo() {
        return "package-info.java".equals(name);
    }

    private static final class Reading extends TreePathScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final DocTrees trees;
        private final String file;
        private final List<Method> methods = new ArrayList<>();
        private final List<String> unexplained = new ArrayList<>();

        Reading(CompilationUnitTree unit, DocTrees trees) {
            this.unit = unit;
            this.trees = trees;
            this.file = Path.of(unit.getSourceFile().toUri().getPath())
                    .getFileName()
                    .toString();
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            if (isPublic(getCurrentPath())) {
                expectJavadoc(type.getSimpleName());
            }
            return super.visitClass(type, null);
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            boolean makesARecord = isInARecord() && method.getReturnType() == null;
            if (method.getBody() != null) {
                methods.add(new Method(
                        place(method, method.getName()),
                        lines(method.getBody()),
                        makesARecord ? 0 : method.getParameters().size()));
            }
            if (isPublic(getCurrentPath()) && !makesARecord && !isAccessor(method) && !isOverride(method)) {
                expectJavadoc(method.getName());
            }
            return super.visitMethod(method, null);
        }

        private void expectJavadoc(Name name) {
            if (trees.getDocCommentTree(getCurrentPath()) == null) {
                unexplained.add(place(getCurrentPath().getLeaf(), name));
            }
        }

        /** Whether it is open to other rooms: it and all around it are public, or stand in an interface that is. */
        private static boolean isPublic(TreePath path) {
            if (path.getLeaf() instanceof CompilationUnitTree) {
                return true;
            }
            Set<Modifier> said = modifiers(path.getLeaf());
            boolean inInterface = path.getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
            return (said.contains(Modifier.PUBLIC) || (inInterface && !said.contains(Modifier.PRIVATE)))
                    && isPublic(path.getParentPath());
        }

        private static Set<Modifier> modifiers(Tree declared) {
            if (declared instanceof MethodTree method) {
                return method.getModifiers().getFlags();
            }
            return declared instanceof ClassTree type ? type.getModifiers().getFlags() : Set.of();
        }

        private boolean isInARecord() {
            return getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.RECORD;
        }

        private static boolean isOverride(MethodTree method) {
            return method.getModifiers().getAnnotations().stream()
                    .anyMatch(annotation ->
                            "Override".equals(annotation.getAnnotationType().toString()));
        }

        private boolean isAccessor(MethodTree method) {
            ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
            return isInARecord()
                    && method.getParameters().isEmpty()
                    && owner.getMembers().stream()
                            .filter(VariableTree.class::isInstance)
                            .map(VariableTree.class::cast)
                            .anyMatch(component -> component.getName().equals(method.getName()));
        }

        private long lines(Tree tree) {
            return line(trees.getSourcePositions().getEndPosition(unit, tree) - 1)
                    - line(trees.getSourcePositions().getStartPosition(unit, tree))
                    + 1;
        }

        private long line(long position) {
            return unit.getLineMap().getLineNumber(position);
        }

        private String place(Tree tree, Name name) {
            return "%s (%s:%s)"
                    .formatted(name, file, line(trees.getSourcePositions().getStartPosition(unit, tree)));
        }
    }
}
