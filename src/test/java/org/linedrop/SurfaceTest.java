package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Inner;

/**
 * What is public has a reason. An embedder begins with the types that the runner, the consumer project and the sample of
 * the documents import; from there he meets what their public members name. Every public type is one of these, or an
 * inner working that another package needs.
 */
class SurfaceTest {
    private static final String OURS = "org.linedrop.";

    /** Types an embedder begins with although none of ours does, and why. */
    private static final Map<String, String> ENTRANCES = new LinkedHashMap<>();

    /** Inner workings that no other package of the library needs, and why they are public. */
    private static final Map<String, String> BESIDES = new LinkedHashMap<>();

    static {
        ENTRANCES.put("fact.Inner", "the mark itself");
        ENTRANCES.put("fluid.FluidRangeException", "what a fluid throws when asked out of its range");
        ENTRANCES.put("result.SolveStatus", "the status line of a result, as reports print it");
        ENTRANCES.put("study.Advice", "rules of thumb judged, of a checked circuit");
        ENTRANCES.put("study.FlowPath", "the ways of the flow, of a result");
        ENTRANCES.put("study.PartLoss", "the loss of each part, of a result");
        ENTRANCES.put("study.SystemCurve", "what the lines need against what the pump gives, of a result");
        String nets = "textbook networks without a circuit: tests and benchmarks of the solver";
        BESIDES.put("network.FixedFlow", nets);
        BESIDES.put("network.NetworkBuilder", nets);
        BESIDES.put("network.OneWay", nets);
        BESIDES.put("network.Prescribed", nets);
        BESIDES.put("network.PrescribedPump", nets);
        BESIDES.put("network.Trace", "holds the records of the trace, which others read");
    }

    private static JavaClasses main;
    private static final Map<Class<?>, String> REACHED = new LinkedHashMap<>();

    @BeforeAll
    static void readClasses() throws IOException, ReflectiveOperationException {
        Path classes = Path.of(
                Inner.class.getProtectionDomain().getCodeSource().getLocation().getPath());
        main = new ClassFileImporter().importPath(classes);
        REACHED.clear();
        Deque<Class<?>> next = new ArrayDeque<>();
        for (Map.Entry<String, String> entrance : entrances().entrySet()) {
            reach(Class.forName(entrance.getKey()), entrance.getValue(), next);
        }
        while (!next.isEmpty()) {
            Class<?> type = next.remove();
            if (open(type) && !inner(type)) {
                follow(type, next);
            }
        }
    }

    /** Names of types that somebody outside imports, and who. */
    private static Map<String, String> entrances() throws IOException {
        Map<String, String> found = new LinkedHashMap<>();
        ENTRANCES.forEach((name, why) -> found.put(OURS + name, why));
        for (JavaClass runner : main) {
            if (runner.getPackageName().equals(OURS + "cli")) {
                runner.getDirectDependenciesFromSelf()
                        .forEach(use -> found.putIfAbsent(
                                use.getTargetClass().getBaseComponentType().getName(), runner.getSimpleName()));
            }
        }
        Pattern imported = Pattern.compile("(?m)^import (" + OURS.replace(".", "\\.") + "[a-z.]+\\.[A-Z]\\w*);$");
        for (String file : List.of(
                "src/consumer/src/main/java/consumer/Planner.java", "src/test/java/org/linedrop/EmbeddingTest.java")) {
            List<String> names = imported.matcher(Files.readString(Path.of(file)))
                    .results()
                    .map((MatchResult line) -> line.group(1))
                    .toList();
            assertThat(names).as(file).hasSizeGreaterThan(3);
            names.forEach(name -> found.putIfAbsent(name, file));
        }
        found.keySet().removeIf(name -> !name.startsWith(OURS) || name.startsWith(OURS + "cli."));
        return found;
    }

    private static void follow(Class<?> type, Deque<Class<?>> next) {
        for (Method each : type.getDeclaredMethods()) {
            if (Modifier.isPublic(each.getModifiers())
                    && !each.isSynthetic()
                    && !each.isAnnotationPresent(Inner.class)) {
                String from = type.getSimpleName() + "." + each.getName();
                reach(each.getGenericReturnType(), from, next);
                reach(List.of(each.getGenericParameterTypes()), from, next);
                reach(List.of(each.getGenericExceptionTypes()), from, next);
            }
        }
        for (Constructor<?> each : type.getDeclaredConstructors()) {
            if (Modifier.isPublic(each.getModifiers()) && !each.isAnnotationPresent(Inner.class)) {
                reach(List.of(each.getGenericParameterTypes()), "new " + type.getSimpleName(), next);
            }
        }
        for (Field each : type.getDeclaredFields()) {
            if (Modifier.isPublic(each.getModifiers())) {
                reach(each.getGenericType(), type.getSimpleName() + "." + each.getName(), next);
            }
        }
        String from = type.getSimpleName();
        if (type.isSealed()) {
            reach(List.of(type.getPermittedSubclasses()), from, next);
        }
        reach(List.of(type.getDeclaredClasses()), from, next);
        reach(List.of(type.getGenericInterfaces()), from, next);
        if (type.getDeclaringClass() != null) {
            reach(type.getDeclaringClass(), from, next);
        }
    }

    private static void reach(List<? extends Type> types, String from, Deque<Class<?>> next) {
        types.forEach(type -> reach(type, from, next));
    }

    private static void reach(Type type, String from, Deque<Class<?>> next) {
        if (type instanceof ParameterizedType whole) {
            reach(whole.getRawType(), from, next);
            reach(List.of(whole.getActualTypeArguments()), from, next);
        } else if (type instanceof WildcardType any) {
            reach(List.of(any.getUpperBounds()), from, next);
            reach(List.of(any.getLowerBounds()), from, next);
        } else if (type instanceof GenericArrayType array) {
            reach(array.getGenericComponentType(), from, next);
        } else if (type instanceof Class<?> known && known.isArray()) {
            reach(known.getComponentType(), from, next);
        } else if (type instanceof Class<?> known
                && known.getName().startsWith(OURS)
                && REACHED.putIfAbsent(known, from) == null) {
            next.add(known);
        }
    }

    /** Whether somebody in another package can name it. */
    private static boolean open(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getDeclaringClass() == null || open(type.getDeclaringClass()));
    }

    private static boolean inner(Class<?> type) {
        return type.isAnnotationPresent(Inner.class)
                || type.getPackage().isAnnotationPresent(Inner.class)
                || (type.getDeclaringClass() != null && inner(type.getDeclaringClass()));
    }

    private static String name(Class<?> type) {
        return type.getName().substring(OURS.length());
    }

    private static List<Class<?>> publicTypes() throws ReflectiveOperationException {
        List<Class<?>> types = new ArrayList<>();
        for (JavaClass each : main) {
            if (each.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC)
                    && !each.isNestedClass()
                    && !each.getPackageName().equals(OURS + "cli")) {
                types.add(Class.forName(each.getName()));
            }
        }
        return types;
    }

    @Test
    void whatAnEmbedderCannotMeetIsNotPublicOrSaysThatItIsInner() throws ReflectiveOperationException {
        assertThat(publicTypes()).hasSizeGreaterThan(100);
        assertThat(publicTypes().stream()
                        .filter(type -> !inner(type) && !REACHED.containsKey(type))
                        .map(SurfaceTest::name))
                .as(
                        "public, but nobody outside meets it: make it package-private, mark it @Inner, or name it here with a"
                                + " reason")
                .isEmpty();
    }

    @Test
    void nothingAnEmbedderMeetsIsInner() {
        assertThat(REACHED)
                .hasSizeGreaterThan(100)
                .allSatisfy((type, from) -> assertThat(open(type) && inner(type))
                        .as("%s is inner, but %s shows it", name(type), from)
                        .isFalse());
    }

    @Test
    void innerWorkingsArePublicForSomebodyElse() throws ReflectiveOperationException {
        Set<String> used = new LinkedHashSet<>();
        for (JavaClass each : main) {
            each.getDirectDependenciesFromSelf().forEach(use -> {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (!target.getPackageName().equals(each.getPackageName())) {
                    used.add(target.getName());
                }
            });
        }
        Set<String> alone = new LinkedHashSet<>();
        for (Class<?> type : publicTypes()) {
            if (inner(type) && !used.contains(type.getName())) {
                alone.add(name(type));
            }
        }
        assertThat(alone).containsExactlyInAnyOrderElementsOf(BESIDES.keySet());
    }

    @Test
    void entrancesAreOpen() throws ReflectiveOperationException {
        for (String name : ENTRANCES.keySet()) {
            Class<?> type = Class.forName(OURS + name);
            assertThat(open(type) && !inner(type)).as(name).isTrue();
        }
    }
}
