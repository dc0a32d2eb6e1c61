package soapstone.speed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Compiles Java text without any file. */
final class InMemory {

    private final JavaCompiler compiler;

    private InMemory(JavaCompiler compiler) {
        this.compiler = compiler;
    }

    /** The compiler of this Java, or empty where there is only what is needed to run programs. */
    static Optional<InMemory> compiler() {
        return Optional.ofNullable(ToolProvider.getSystemJavaCompiler()).map(InMemory::new);
    }

    /**
     * The class of that name.
     *
     * @throws IllegalArgumentException with the compiler's words and the text
     */
    PlainMarking make(String name, String source) {
        Map<String, ByteArrayOutputStream> classes = new HashMap<>();
        DiagnosticCollector<JavaFileObject> told = new DiagnosticCollector<>();
        try (JavaFileManager files = new Keeping(compiler.getStandardFileManager(told, null, null), classes)) {
            List<String> options = List.of("-proc:none", "-nowarn", "-XDuseUnsharedTable=true", "-classpath", classPath());
            boolean good = compiler.getTask(new StringWriter(), files, told, options, null, List.of(new Text(name, source))).call();
            if (!good) {
                throw new IllegalArgumentException(told.getDiagnostics() + "\n" + source);
            }
            return (PlainMarking) new Loader(classes).loadClass(name).getDeclaredConstructor().newInstance();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Where this program and its solver are, whether they run from a jar, a folder or a build tool. */
    private static String classPath() {
        Set<String> paths = new LinkedHashSet<>();
        for (Class<?> needed : List.of(PlainMarking.class, org.apache.commons.math3.analysis.solvers.BrentSolver.class)) {
            CodeSource source = needed.getProtectionDomain().getCodeSource();
            try {
                paths.add(Path.of(source.getLocation().toURI()).toString());
            } catch (URISyntaxException e) {
                throw new IllegalStateException(e);
            }
        }
        return String.join(System.getProperty("path.separator"), paths);
    }

    private static final class Text extends SimpleJavaFileObject {
        private final String source;

        Text(String name, String source) {
            super(URI.create("text:///" + name + ".java"), Kind.SOURCE);
            this.source = source;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source;
        }
    }

    private static final class Keeping extends ForwardingJavaFileManager<JavaFileManager> {
        private final Map<String, ByteArrayOutputStream> classes;

        Keeping(JavaFileManager files, Map<String, ByteArrayOutputStream> classes) {
            super(files);
            this.classes = classes;
        }

        @Override
        public JavaFileObject getJavaFileForOutput(Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("bytes:///" + name), kind) {
                @Override
                public OutputStream openOutputStream() {
                    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                    classes.put(name, bytes);
                    return bytes;
                }
            };
        }
    }

    private static final class Loader extends ClassLoader {
        private final Map<String, ByteArrayOutputStream> classes;

        Loader(Map<String, ByteArrayOutputStream> classes) {
            super(PlainMarking.class.getClassLoader());
            this.classes = classes;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            ByteArrayOutputStream bytes = classes.get(name);
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes.toByteArray(), 0, bytes.size());
        }
    }
}
