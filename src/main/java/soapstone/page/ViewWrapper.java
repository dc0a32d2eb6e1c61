package soapstone.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleHash;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.SimpleSequence;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Shows a template the parts of records, lists, texts and numbers, and nothing else: no method can be called from a
 * template but those that {@link Pages} hands in.
 */
final class ViewWrapper implements ObjectWrapper {

    private static final ClassValue<Map<String, Method>> PARTS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> parts = new HashMap<>();
            for (RecordComponent part : type.getRecordComponents()) {
                Method accessor = part.getAccessor();
                // Asked once here, and not again at each call.
                accessor.setAccessible(true);
                parts.put(part.getName(), accessor);
            }
            return parts;
        }
    };

    @Override
    public TemplateModel wrap(Object value) throws TemplateModelException {
        if (value == null || value instanceof TemplateModel) {
            return (TemplateModel) value;
        }
        if (value instanceof Optional<?> maybe) {
            return wrap(maybe.orElse(null));
        }
        if (value instanceof Html html) {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html.markup());
        }
        if (value instanceof Record part) {
            return new View(part);
        }
        return wrapPlain(value);
    }

    private TemplateModel wrapPlain(Object value) throws TemplateModelException {
        if (value instanceof String text) {
            return new SimpleScalar(text);
        }
        if (value instanceof Enum<?> word) {
            return new SimpleScalar(word.name());
        }
        if (value instanceof Number number) {
            return new SimpleNumber(number);
        }
        if (value instanceof Boolean yes) {
            return yes ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
        }
        if (value instanceof Collection<?> many) {
            return new SimpleSequence(many, this);
        }
        if (value instanceof Map<?, ?> map) {
            // In the order that the view has them: faults stand as the fields do.
            return new SimpleHash(new LinkedHashMap<>(map), this);
        }
        throw new TemplateModelException("not for templates: " + value.getClass().getName());
    }

    /** A record as a template sees it. */
    private final class View implements TemplateHashModel {

        private final Record record;

        View(Record record) {
            this.record = record;
        }

        /** The record itself, for the methods of {@link Pages}. */
        Record record() {
            return record;
        }

        @Override
        public TemplateModel get(String name) throws TemplateModelException {
            Method part = PARTS.get(record.getClass()).get(name);
            if (part == null) {
                throw new TemplateModelException(record.getClass().getSimpleName() + " has no part '" + name + "'");
            }
            try {
                return wrap(part.invoke(record));
            } catch (ReflectiveOperationException e) {
                throw new TemplateModelException(e);
            }
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    /** The record behind a template's value, if it is one of that type. */
    static <T extends Record> Optional<T> behind(Object model, Class<T> type) {
        return model instanceof View view && type.isInstance(view.record())
                ? Optional.of(type.cast(view.record()))
                : Optional.empty();
    }
}
