package org.roofmaths.internal.style;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.immutables.value.Value;

/**
 * The style of a definition with four required parts or more: as {@link RoofStyle}, and the builder asks for the
 * required parts one after another, in the order in which they are declared. That order is part of the API.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.CLASS) // other modules read it from the class file
@Value.Style(
        visibility = Value.Style.ImplementationVisibility.PRIVATE,
        builderVisibility = Value.Style.BuilderVisibility.PUBLIC,
        stagedBuilder = true)
public @interface StagedStyle {}
