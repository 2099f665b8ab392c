package org.roofmaths.checks.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.lang.module.ModuleDescriptor.Requires;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Who may know whom, and what no published class may do. */
class LayersTest {
    private static final String OURS = "org.roofmaths.";
    private static final String INTERNAL = ".internal";

    private static final DescribedPredicate<JavaClass> EXPORTED =
            describe("in an exported package", Published::isExported);

    // Layers

    @Test
    void all_three_modules_are_looked_at() {
        assertThat(Published.modules().stream().map(module -> module.name()))
                .containsExactlyInAnyOrder(Published.UNITS, Published.CORE, Published.RULES);
        assertThat(Published.CLASSES.stream().map(Published::moduleOf).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(Published.UNITS, Published.CORE, Published.RULES);
    }

    @Test
    void modules_bring_in_nothing_but_what_the_read_me_says() {
        assertThat(brought(Published.UNITS)).isEmpty();
        assertThat(brought(Published.CORE)).containsExactlyInAnyOrder(Published.UNITS, "commons.math3", "java.xml");
        assertThat(brought(Published.RULES)).containsExactlyInAnyOrder(Published.CORE, "de.siegmar.fastcsv");
    }

    private static Set<String> brought(String module) {
        return Published.module(module).requires().stream()
                .filter(requires -> !requires.modifiers().contains(Requires.Modifier.STATIC))
                .map(Requires::name)
                .filter(name -> !name.equals("java.base"))
                .collect(Collectors.toSet());
    }

    @Test
    void no_package_is_in_two_modules() {
        Set<String> seen = new HashSet<>();
        assertThat(Published.modules().stream()
                        .flatMap(module -> module.packages().stream())
                        .filter(name -> !seen.add(name)))
                .isEmpty();
    }

    @Test
    void units_know_no_other_package_of_ours() {
        check(noClasses()
                .that()
                .resideInAPackage("org.roofmaths.units..")
                .should()
                .dependOnClassesThat(
                        resideInAPackage("org.roofmaths..").and(resideOutsideOfPackage("org.roofmaths.units.."))));
    }

    @Test
    void core_knows_neither_rules_nor_sheet_nor_exercise() {
        String[] above = {"org.roofmaths.rules..", "org.roofmaths.sheet..", "org.roofmaths.exercise.."};
        check(noClasses()
                .that()
                .resideOutsideOfPackages(above)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(above));
    }

    @Test
    void published_modules_know_neither_the_examples_nor_the_checks() {
        check(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.roofmaths.examples..", "org.roofmaths.checks..", "org.roofmaths.benchmarks.."));
    }

    /** A subject and its own internal package count as one; each package below {@code org.roofmaths.internal} as its own. */
    @Test
    void packages_form_no_cycle() {
        check(slices().assignedFrom(new SliceAssignment() {
                    @Override
                    public SliceIdentifier getIdentifierOf(JavaClass type) {
                        if (!type.getPackageName().startsWith(OURS)) {
                            return SliceIdentifier.ignore();
                        }
                        String[] parts =
                                type.getPackageName().substring(OURS.length()).split("\\.", -1);
                        return parts[0].equals("internal") && parts.length > 1
                                ? SliceIdentifier.of(parts[0] + "." + parts[1])
                                : SliceIdentifier.of(parts[0]);
                    }

                    @Override
                    public String getDescription() {
                        return "subjects";
                    }
                })
                .should()
                .beFreeOfCycles());
    }

    // Internals

    @Test
    void internals_are_used_only_by_the_package_they_belong_to() {
        check(classes()
                .that()
                .resideInAPackage("..internal..")
                .should(new ArchCondition<>("be used only from beside it") {
                    @Override
                    public void check(JavaClass internal, ConditionEvents events) {
                        // the style of the builders is a common form, not a working part
                        if (internal.getPackageName().equals("org.roofmaths.internal.style")) {
                            return;
                        }
                        for (Dependency use : internal.getDirectDependenciesToSelf()) {
                            if (!mayUse(use.getOriginClass(), internal)) {
                                events.add(SimpleConditionEvent.violated(internal, use.getDescription()));
                            }
                        }
                    }
                }));
    }

    private static boolean mayUse(JavaClass user, JavaClass internal) {
        String name = internal.getPackageName();
        String owner = name.substring(0, name.indexOf(INTERNAL));
        boolean beside = (user.getPackageName() + ".").startsWith(owner + ".");
        return beside && Published.moduleOf(user).equals(Published.moduleOf(internal));
    }

    @Test
    void internals_are_not_exported() {
        assertThat(Published.exportedPackages()).isNotEmpty().noneMatch(name -> name.contains(INTERNAL));
    }

    @Test
    void only_numerics_touches_commons_math() {
        check(noClasses()
                .that()
                .resideOutsideOfPackage("org.roofmaths.internal.numerics..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3.."));
    }

    @Test
    void only_internals_of_the_rules_touch_the_csv_reader() {
        check(noClasses()
                .that(DescribedPredicate.not(inModule(Published.RULES).and(resideInAPackage("..internal.."))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("de.siegmar.fastcsv.."));
    }

    @Test
    void signatures_show_only_the_jdk_and_exported_types() {
        check(classes()
                .that(EXPORTED)
                .and()
                .arePublic()
                .should(new ArchCondition<>("show only the JDK and exported types") {
                    @Override
                    public void check(JavaClass type, ConditionEvents events) {
                        Stream.concat(type.getRawSuperclass().stream(), type.getRawInterfaces().stream())
                                .filter(shown -> !mayBeShown(shown))
                                .forEach(shown -> violated(events, type.getName(), shown));
                        type.getMembers().stream()
                                .filter(LayersTest::isVisible)
                                .forEach(member -> shownBy(member)
                                        .filter(shown -> !mayBeShown(shown))
                                        .forEach(shown -> violated(events, member.getFullName(), shown)));
                    }

                    private void violated(ConditionEvents events, String where, JavaClass shown) {
                        events.add(SimpleConditionEvent.violated(where, where + " shows " + shown.getName()));
                    }
                }));
    }

    private static boolean isVisible(JavaMember member) {
        return (member.getModifiers().contains(JavaModifier.PUBLIC)
                        || member.getModifiers().contains(JavaModifier.PROTECTED))
                && !member.getModifiers().contains(JavaModifier.SYNTHETIC)
                && !member.getModifiers().contains(JavaModifier.BRIDGE);
    }

    private static Stream<JavaClass> shownBy(JavaMember member) {
        if (member instanceof JavaField field) {
            return field.getType().getAllInvolvedRawTypes().stream();
        }
        JavaCodeUnit unit = (JavaCodeUnit) member;
        Stream<JavaType> types = Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()));
        return Stream.concat(
                types.flatMap(type -> type.getAllInvolvedRawTypes().stream()), unit.getExceptionTypes().stream());
    }

    private static boolean mayBeShown(JavaClass type) {
        JavaClass element = type.getBaseComponentType();
        return element.isPrimitive()
                || element.getPackageName().startsWith("java.")
                || Published.isExported(element)
                        && (element.getModifiers().contains(JavaModifier.PUBLIC)
                                || element.getModifiers().contains(JavaModifier.PROTECTED));
    }

    // What no published class does

    @Test
    void nothing_prints_and_nothing_logs() {
        check(GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS);
        check(GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING);
    }

    @Test
    void nothing_needs_the_desktop() {
        check(noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "java.beans..", "javax.swing..", "javax.imageio..", "javax.print.."));
    }

    @Test
    void nothing_is_settable_for_the_whole_process() {
        check(fields().that().areStatic().should().beFinal());
    }

    /** {@code Math} may differ in the last digit from machine to machine; {@code StrictMath} may not. */
    @Test
    void formulas_use_strict_math() {
        Set<String> rounded = Set.of(
                "sin",
                "cos",
                "tan",
                "asin",
                "acos",
                "atan",
                "atan2",
                "sinh",
                "cosh",
                "tanh",
                "hypot",
                "exp",
                "expm1",
                "log",
                "log10",
                "log1p",
                "pow",
                "cbrt",
                "toRadians",
                "toDegrees");
        check(noClasses()
                .should()
                .callMethodWhere(describe(
                        "Math, not StrictMath",
                        (JavaMethodCall call) ->
                                call.getTargetOwner().isEquivalentTo(Math.class) && rounded.contains(call.getName()))));
    }

    @Test
    void optional_is_a_return_type_and_nothing_else() {
        check(fields().that(declaredIn(ownCode())).should().notHaveRawType(Optional.class));
        checkNoPublicMethod("takes an Optional", method -> takes(method, Optional.class));
    }

    /** A boolean at the call says nothing, an enum constant says what is meant; {@code require} takes a condition. */
    @Test
    void no_public_method_takes_a_boolean() {
        checkNoPublicMethod(
                "takes a boolean",
                method -> takes(method, boolean.class) && !method.getName().equals("require"));
    }

    /** Callers in Kotlin or Scala would have to quote these names. */
    @Test
    void no_public_method_is_named_like_a_keyword_of_a_neighbour_language() {
        Set<String> keywords = Set.of(
                "as",
                "fun",
                "in",
                "is",
                "object",
                "typealias",
                "typeof",
                "val",
                "var",
                "when",
                "def",
                "forSome",
                "implicit",
                "lazy",
                "macro",
                "match",
                "override",
                "sealed",
                "trait",
                "type",
                "with",
                "yield");
        checkNoPublicMethod("is named like a keyword", method -> keywords.contains(method.getName()));
    }

    private static boolean takes(JavaMethod method, Class<?> type) {
        return method.getRawParameterTypes().stream().anyMatch(parameter -> parameter.isEquivalentTo(type));
    }

    private static void checkNoPublicMethod(String offence, Predicate<JavaMethod> offends) {
        check(methods()
                .that(declaredIn(EXPORTED.and(ownCode())))
                .and()
                .arePublic()
                .should(new ArchCondition<>("not be one that " + offence) {
                    @Override
                    public void check(JavaMethod method, ConditionEvents events) {
                        if (offends.test(method)) {
                            events.add(SimpleConditionEvent.violated(method, method.getFullName() + " " + offence));
                        }
                    }
                }));
    }

    @Test
    void every_exported_package_says_that_null_is_marked() {
        assertThat(Published.exportedPackages())
                .allSatisfy(
                        name -> assertThat(Published.CLASSES.getPackage(name).isAnnotatedWith(NullMarked.class))
                                .as(name)
                                .isTrue());
    }

    @Test
    void generated_implementations_cannot_be_named_by_a_caller() {
        check(noClasses().that().arePublic().should().haveSimpleNameStartingWith("Immutable"));
    }

    private static DescribedPredicate<JavaClass> inModule(String module) {
        return describe(
                "in " + module,
                type -> type.getPackageName().startsWith("org.roofmaths")
                        && Published.moduleOf(type).equals(module));
    }

    /** Not written by the generator of builders: rules about how we write do not bind it. */
    private static DescribedPredicate<JavaClass> ownCode() {
        return describe(
                "our own code",
                type -> Stream.iterate(
                                Optional.of(type),
                                Optional::isPresent,
                                inner -> inner.get().getEnclosingClass())
                        .map(Optional::get)
                        .noneMatch(outer -> outer.isAnnotatedWith("org.immutables.value.Generated")
                                || outer.getSimpleName().endsWith("BuilderStages")));
    }

    private static DescribedPredicate<JavaMember> declaredIn(DescribedPredicate<JavaClass> types) {
        return describe("declared " + types.getDescription(), member -> types.test(member.getOwner()));
    }

    private static void check(ArchRule rule) {
        rule.check(Published.CLASSES);
    }
}
