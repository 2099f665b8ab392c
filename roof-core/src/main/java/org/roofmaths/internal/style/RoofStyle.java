package org.roofmaths.internal.style;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.immutables.value.Value;

/**
 * The usual style of a definition: a public builder, and behind it an implementation nobody can name.
 * It reaches every package of the core by way of the top package; packages of other modules carry it themselves.
 */
@Target({ElementType.PACKAGE, ElementType.TYPE})
@Retention(RetentionPolicy.CLASS) // other modules read it from the class file
@Value.Style(
        visibility = Value.Style.ImplementationVisibility.PRIVATE,
        builderVisibility = Value.Style.BuilderVisibility.PUBLIC)
public @interface RoofStyle {}
