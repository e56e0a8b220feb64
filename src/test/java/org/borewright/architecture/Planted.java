package org.borewright.architecture;

import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * A class that breaks a rule on purpose. It is kept as text and compiled into a folder of its own: on the class path of the tests the
 * service would take it for one of its endpoints or tables.
 */
final class Planted extends SimpleJavaFileObject {

    private static final Pattern DECLARED = Pattern.compile("\\b(class|record) (?<name>\\w+)");

    private final String type;
    private final String source;

    private Planted(String room, String name, String source) {
        super(URI.create("planted:///" + name + Kind.SOURCE.extension), Kind.SOURCE);
        this.type = room + "." + name;
        this.source = "package " + room + "; " + source;
    }

    /** The class or record that this source declares, as one of a package. */
    static Planted in(String room, String source) {
        Matcher declared = DECLARED.matcher(source);
        if (!declared.find()) {
            throw new IllegalArgumentException("no class is declared by: " + source);
        }
        return new Planted(room, declared.group("name"), source);
    }

    /** Its full name. */
    String type() {
        return type;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return source;
    }

    @Override
    public String toString() {
        return source;
    }

    /** Compiles all of them against the class path of the tests. */
    static void compile(List<Planted> offenders, Path into) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> options =
                List.of("-d", into.toString(), "-cp", System.getProperty("java.class.path"), "-proc:none");
        StringWriter said = new StringWriter();
        JavaCompiler.CompilationTask task =
                compiler.getTask(said, null, null, options, null, List.<JavaFileObject>copyOf(offenders));
        if (!task.call()) {
            throw new IllegalArgumentException("an offender cannot be compiled: " + said);
        }
    }
}
