package org.borewright.api.guard;

import static java.util.stream.Collectors.toCollection;

import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Singleton;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every path the service answers, as its endpoints declare them. */
@Singleton
public class Routes {

    private final List<Route> all;

    /** The routes of all endpoints among these beans. */
    Routes(BeanManager beans) {
        all = beans.getBeans(Object.class, Any.Literal.INSTANCE).stream()
                .map(Bean::getBeanClass)
                .distinct()
                .filter(type -> type.isAnnotationPresent(Path.class))
                .flatMap(type -> Arrays.stream(type.getMethods()).flatMap(method -> route(type, method).stream()))
                .toList();
    }

    /**
     * One path with one method.
     *
     * @param method of HTTP
     * @param path with the names of its variable parts in braces
     * @param parameters the names of its query parameters, sorted
     */
    public record Route(String method, String path, SortedSet<String> parameters) {

        private boolean leadsTo(String asked) {
            String form = Arrays.stream(path.split("/", -1))
                    .map(part -> part.startsWith("{") ? "[^/]+" : Pattern.quote(part))
                    .reduce((before, part) -> before + "/" + part)
                    .orElse("");
            return asked.matches(form);
        }
    }

    /** All of them. */
    public List<Route> all() {
        return all;
    }

    /** Whether a path answers any method. */
    boolean leadSomewhere(String path) {
        return all.stream().anyMatch(route -> route.leadsTo(path));
    }

    /** The methods a path answers, sorted. */
    Set<String> methods(String path) {
        Set<String> methods = new TreeSet<>();
        all.stream().filter(route -> route.leadsTo(path)).map(Route::method).forEach(methods::add);
        if (methods.contains(HttpMethod.GET)) {
            methods.add(HttpMethod.HEAD);
        }
        methods.add(HttpMethod.OPTIONS);
        return methods;
    }

    private static Optional<Route> route(Class<?> type, Method method) {
        return Arrays.stream(method.getAnnotations())
                .map(Annotation::annotationType)
                .flatMap(annotation -> Stream.ofNullable(annotation.getAnnotation(HttpMethod.class)))
                .map(http -> new Route(http.value(), path(type) + path(method), parameters(method)))
                .findFirst();
    }

    private static String path(AnnotatedElement declared) {
        Path path = declared.getAnnotation(Path.class);
        String bare = path == null ? "" : path.value().replaceAll("^/|/$", "");
        return bare.isEmpty() ? "" : "/" + bare;
    }

    private static SortedSet<String> parameters(Method method) {
        return Arrays.stream(method.getParameters())
                .map((Parameter parameter) -> parameter.getAnnotation(QueryParam.class))
                .flatMap(Stream::ofNullable)
                .map(QueryParam::value)
                .collect(toCollection(TreeSet::new));
    }
}
