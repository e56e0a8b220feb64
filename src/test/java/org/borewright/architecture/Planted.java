package org.borewright.architecture;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * A class that breaks a rule on purpose. It is kept as text and compiled into a folder of its own: on the class path of the tests the
 * service would take it for one of its endpoints or tables.
 */
final class Planted extends SimpleJavaFileObject {

    private final String type;
    private final String source;

    /** One class of a package, as it would be typed. */
    Planted(String room, String name, String source) {
        super(URI.create("planted:///" + name + Kind.SOURCE.extension), Kind.SOURCE);
        this.type = room + "." + name;
        this.source = "package " + room + "; " + source;
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
    static void compile(List<Planted> offenders, Path into) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> options =
                List.of("-d", into.toString(), "-cp", System.getProperty("java.class.path"), "-proc:none");
        StringWriter said = new StringWriter();
        if (!compiler.getTask(said, null, null, options, null, List.<JavaFileObject>copyOf(offenders))
                .call()) {
            throw new IllegalStateException(
                    offenders.stream().map(Planted::toString).collect(joining("\n", "cannot be compiled:\n", "\n"))
                            + said);
        }
    }
}
