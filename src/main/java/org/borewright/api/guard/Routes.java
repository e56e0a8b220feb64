package org.borewright.api.guard;

import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Singleton;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.lang.annotation.Annotation;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
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
     * @param made the media types that it answers in where nothing is wrong
     */
    public record Route(String method, String path, List<String> made) {

        private boolean isOfTheApi() {
            return path.startsWith("/api") || path.startsWith("/problems");
        }

        private boolean leadsTo(List<String> asked) {
            List<String> parts = parts(Arrays.stream(path.split("/", -1)));
            return asked.size() == parts.size()
                    && IntStream.range(0, parts.size())
                            .allMatch(i ->
                                    parts.get(i).startsWith("{") || parts.get(i).equals(asked.get(i)));
        }
    }

    /** All of them. */
    public List<Route> all() {
        return all;
    }

    /** Those that speak JSON and stand in the contract; the others are pages for people. */
    public List<Route> ofTheApi() {
        return all.stream().filter(Route::isOfTheApi).toList();
    }

    /** Whether the path asked for answers any method. */
    boolean leadSomewhere(UriInfo asked) {
        List<String> parts = parts(asked);
        return all.stream().anyMatch(route -> route.leadsTo(parts));
    }

    /** The methods the path asked for answers, sorted. */
    Set<String> methods(UriInfo asked) {
        List<String> parts = parts(asked);
        Set<String> methods = new TreeSet<>();
        all.stream().filter(route -> route.leadsTo(parts)).map(Route::method).forEach(methods::add);
        if (methods.contains(HttpMethod.GET)) {
            methods.add(HttpMethod.HEAD);
        }
        methods.add(HttpMethod.OPTIONS);
        return methods;
    }

    /** The media types that the path asked for answers a method in. */
    List<String> made(UriInfo asked, String method) {
        List<String> parts = parts(asked);
        String answered = method.equals(HttpMethod.HEAD) ? HttpMethod.GET : method;
        return all.stream()
                .filter(route -> route.leadsTo(parts) && route.method().equals(answered))
                .flatMap(route -> route.made().stream())
                .distinct()
                .toList();
    }

    /** Read as the framework reads them when it looks for an endpoint: unescaped, a stroke more or less not counted. */
    private static List<String> parts(UriInfo asked) {
        return parts(Arrays.stream(asked.getRequestUri().getRawPath().split("/", -1))
                .map(part -> URLDecoder.decode(part.replace("+", "%2B"), StandardCharsets.UTF_8)));
    }

    private static List<String> parts(Stream<String> parts) {
        return parts.filter(part -> !part.isEmpty()).toList();
    }

    private static Optional<Route> route(Class<?> type, Method method) {
        return Arrays.stream(method.getAnnotations())
                .map(Annotation::annotationType)
                .flatMap(annotation -> Stream.ofNullable(annotation.getAnnotation(HttpMethod.class)))
                .map(http -> new Route(http.value(), path(type) + path(method), made(type, method)))
                .findFirst();
    }

    private static List<String> made(Class<?> type, Method method) {
        Produces own = method.getAnnotation(Produces.class);
        Produces declared = own == null ? type.getAnnotation(Produces.class) : own;
        return declared == null
                ? List.of(MediaType.APPLICATION_JSON)
                : Arrays.stream(declared.value())
                        .map(name -> name.replaceAll("[; ].*", ""))
                        .toList();
    }

    private static String path(AnnotatedElement declared) {
        Path path = declared.getAnnotation(Path.class);
        String bare = path == null ? "" : path.value().replaceAll("^/|/$", "");
        return bare.isEmpty() ? "" : "/" + bare;
    }
}
