package org.roofmaths.checks.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.working.Term;

/** Terms and problem codes are names in the public interface: each name means one thing. */
class TermsTest {

    private static <T> List<T> constants(Class<T> type) throws IllegalAccessException {
        List<T> found = new ArrayList<>();
        for (JavaClass each : Published.CLASSES) {
            if (!Published.isExported(each)
                    || !each.getModifiers().contains(com.tngtech.archunit.core.domain.JavaModifier.PUBLIC)) {
                continue;
            }
            for (Field field : each.reflect().getDeclaredFields()) {
                int modifiers = field.getModifiers();
                if (field.getType() == type && Modifier.isStatic(modifiers) && Modifier.isPublic(modifiers)) {
                    found.add(type.cast(field.get(null)));
                }
            }
        }
        return found;
    }

    @Test
    void a_term_has_one_symbol_and_one_type() throws IllegalAccessException {
        Map<String, Term<?>> byName = new LinkedHashMap<>();
        List<String> clashes = new ArrayList<>();
        List<Term<?>> terms = new ArrayList<>();
        for (Term<?> term : constants(Term.class)) {
            terms.add(term);
            Term<?> other = byName.putIfAbsent(term.name(), term);
            if (other != null && !other.at("").equals(term.at(""))) {
                clashes.add(term.name() + ": " + other.symbol() + " "
                        + other.valueType().getSimpleName() + " and " + term.symbol() + " "
                        + term.valueType().getSimpleName());
            }
        }
        assertThat(terms).hasSizeGreaterThan(300);
        assertThat(clashes).isEmpty();
    }

    @Test
    void a_problem_code_is_declared_once() throws IllegalAccessException {
        List<String> ids =
                constants(ProblemCode.class).stream().map(ProblemCode::id).toList();
        assertThat(ids).hasSizeGreaterThan(50).doesNotHaveDuplicates();
    }
}
