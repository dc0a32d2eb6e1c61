package soapstone.web;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIf;

/** Needs a real browser; where Chromium or its driver is missing, the test is skipped and says so. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Tag("browser")
@EnabledIf(value = "soapstone.web.Chromium#isHere", disabledReason = "Chromium and its driver are not on the PATH (Debian: chromium, chromium-driver)")
public @interface InChromium {}
