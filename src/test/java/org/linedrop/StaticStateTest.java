package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.linedrop.report.JsonReport;
import org.linedrop.study.FeedCheck;

/** No static state that changes: static fields are final and hold what cannot be changed. */
class StaticStateTest {
    /** Values of other libraries and of the JDK that cannot be changed, or are made for use by many threads. */
    private static final List<String> IMMUTABLE = List.of(
            "java.lang.String",
            "java.lang.Boolean",
            "java.lang.Integer",
            "java.lang.Long",
            "java.lang.Double",
            "java.lang.Character",
            "java.lang.Class",
            "java.math.BigDecimal",
            "java.math.BigInteger",
            "java.math.MathContext",
            "java.util.regex.Pattern",
            "java.util.Optional",
            "java.nio.charset.",
            "sun.nio.cs.",
            // built once, handed to many: "factory instances are thread-safe and reusable after configuration"
            "tools.jackson.core.json.JsonFactory");

    private static final List<String> FROZEN_COLLECTIONS = List.of(
            "java.util.ImmutableCollections$", "java.util.Collections$Unmodifiable", "java.util.Collections$Empty");

    private final IdentityHashMap<Object, Boolean> seen = new IdentityHashMap<>();
    private final List<String> changeable = new ArrayList<>();

    private static List<Field> staticFields() throws ClassNotFoundException {
        List<Field> fields = new ArrayList<>();
        for (JavaClass each : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.linedrop")) {
            for (Field field : Class.forName(each.getName()).getDeclaredFields()) {
                // what the compiler and the coverage agent make themselves is marked synthetic
                if (Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
                    field.setAccessible(true);
                    fields.add(field);
                }
            }
        }
        return fields;
    }

    @Test
    void staticFieldsAreFinalAndHoldWhatCannotChange() throws ReflectiveOperationException {
        List<Field> fields = staticFields();
        assertThat(fields).hasSizeGreaterThan(300);
        for (Field field : fields) {
            String name = field.getDeclaringClass().getName() + "." + field.getName();
            if (!Modifier.isFinal(field.getModifiers())) {
                changeable.add(name + " is not final");
            }
            if (field.getType().isArray() && !Modifier.isPrivate(field.getModifiers())) {
                changeable.add(name + " is an array that others can reach");
            }
            look(field.get(null), name);
        }
        assertThat(changeable).isEmpty();
    }

    private void look(Object value, String where) throws ReflectiveOperationException {
        if (value == null || value instanceof Enum<?> || seen.put(value, true) != null || isImmutable(value)) {
            return;
        }
        Class<?> type = value.getClass();
        if (value instanceof Collection<?> || value instanceof Map<?, ?>) {
            if (FROZEN_COLLECTIONS.stream().noneMatch(type.getName()::startsWith)) {
                changeable.add(where + " is a " + type.getName());
                return;
            }
            Collection<?> inside = value instanceof Map<?, ?> map ? map.values() : (Collection<?>) value;
            for (Object each : inside) {
                look(each, where + "[]");
            }
        } else if (type.isArray()) {
            for (int i = 0; !type.getComponentType().isPrimitive() && i < Array.getLength(value); i++) {
                look(Array.get(value, i), where + "[]");
            }
        } else if (type.isHidden() || type.isSynthetic()) {
            return; // a lambda: what it holds are final variables
        } else if (type.getName().startsWith("org.linedrop.")) {
            for (Class<?> part = type; part != Object.class && part != Record.class; part = part.getSuperclass()) {
                for (Field field : part.getDeclaredFields()) {
                    if (!Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
                        field.setAccessible(true);
                        if (!Modifier.isFinal(field.getModifiers())) {
                            changeable.add(where + "." + field.getName() + " is not final");
                        }
                        look(field.get(value), where + "." + field.getName());
                    }
                }
            }
        } else {
            changeable.add(where + " is a " + type.getName());
        }
    }

    private static boolean isImmutable(Object value) {
        return IMMUTABLE.stream().anyMatch(value.getClass().getName()::startsWith);
    }

    /** Arrays cannot be frozen: they are private, and here it is seen that a whole check leaves them as they were. */
    @Test
    void arraysStayAsTheyWere() throws ReflectiveOperationException {
        Map<String, String> before = arrays();
        assertThat(before).hasSizeGreaterThan(5);
        for (String name : List.of("first-feed.yaml", "y-block.yaml")) {
            assertThat(JsonReport.text(FeedCheck.of(Examples.circuit(name)))).isNotEmpty();
        }
        assertThat(arrays()).isEqualTo(before);
    }

    private static Map<String, String> arrays() throws ReflectiveOperationException {
        Map<String, String> values = new LinkedHashMap<>();
        for (Field field : staticFields()) {
            if (field.getType().isArray()) {
                values.put(
                        field.getDeclaringClass().getName() + "." + field.getName(),
                        Arrays.deepToString(new Object[] {field.get(null)}));
            }
        }
        return values;
    }
}
