package chock.cli;

import chock.archive.AsOf;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the moment of judgement from an option. */
final class AsOfWord implements ITypeConverter<AsOf> {
    @Override
    public AsOf convert(String text) {
        return AsOf.read(text).orElseThrow(() -> new TypeConversionException("'" + text + "' is not a date and time; " + AsOf.ADVICE));
    }
}
